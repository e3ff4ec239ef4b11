"""The whole mounting standard of a plant, in one readable function."""

from generator.findings import findings
from generator.mounting.axial import shaft_lines
from generator.mounting.bent_shaft import bent_shaft_lines
from generator.mounting.lubrication import lubrication_plan
from generator.mounting.machine_life import machine_life_lines
from generator.mounting.position import position_sheet
from generator.mounting.reactions import shaft_loads
from generator.mounting.sheet import MachineSheets, MountingStandard, ShaftSheet
from generator.plant.plant import Machine, Plant, Shaft


def mounting_standard(plant: Plant) -> MountingStandard:
    """Every sheet, every finding and the year's lubrication of the plant."""
    machines = tuple(machine_sheets(plant, machine) for machine in plant.machines)
    found = findings(plant, machines)
    return MountingStandard(plant, machines, found, lubrication_plan(plant, machines), {m.machine.tag: m for m in machines})


def machine_sheets(plant: Plant, machine: Machine) -> MachineSheets:
    """The sheets of one machine."""
    shafts = tuple(_shaft_sheet(plant, machine, shaft) for shaft in machine.shafts)
    return MachineSheets(machine, shafts, {line.key: line for line in machine_life_lines(shafts)})


def _shaft_sheet(plant: Plant, machine: Machine, shaft: Shaft) -> ShaftSheet:
    loads = shaft_loads(plant, shaft)
    sheets = tuple(position_sheet(plant, machine, shaft, position, loads) for position in shaft.positions)
    lines = {line.key: line for line in (*shaft_lines(shaft), *bent_shaft_lines(plant, shaft, loads))}
    return ShaftSheet(shaft, sheets, lines, loads)


__all__ = ["machine_sheets", "mounting_standard"]
