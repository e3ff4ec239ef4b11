"""The rules, named in one list, and the findings of a plant."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from generator.findings import axial, bolts, clearance, documents, feet, grease, housing, loads, locks, rings, seat, work
from generator.findings.finding import JOBS, LEVELS, Judged, Looks, judged
from generator.mounting.sheet import MachineSheets
from generator.plant.plant import Plant

# in the order of consequence within a level: people, fire, food, the machine
RULES: tuple[tuple[type, Looks], ...] = (
    (grease.RegreaseRunningBehindGuard, grease.regrease_running_behind_guard),
    (axial.VerticalWeightOnFree, axial.vertical_weight_on_free),
    (housing.DustZoneIgnition, housing.dust_zone_ignition),
    (grease.FoodGrease, grease.food_grease),
    (rings.EccentricOnReversing, rings.eccentric_on_reversing),
    (rings.CollarDirectionUnknown, rings.collar_direction_unknown),
    (axial.TwoFixedBearings, axial.two_fixed_bearings),
    (axial.NoFixedBearing, axial.no_fixed_bearing),
    (axial.GrowthOverFloat, axial.growth_over_float),
    (clearance.ClearanceLeftTooSmall, clearance.clearance_left_too_small),
    (clearance.ClearanceGroupTooSmall, clearance.clearance_group_too_small),
    (clearance.RingWillNotSlideOn, clearance.ring_will_not_slide_on),
    (loads.LoadOnWeakAxis, loads.load_on_weak_axis),
    (loads.StaticSafetyTooLow, loads.static_safety_too_low),
    (seat.ShaftBelowLimit, seat.shaft_below_limit),
    (seat.ShaftAboveLimit, seat.shaft_above_limit),
    (seat.InchMetricNearMiss, seat.inch_metric_near_miss),
    (seat.WrongBore, seat.wrong_bore),
    (work.CombinationWithoutSteps, work.combination_without_steps),
    (locks.NutThreadNotSleeveThread, locks.nut_thread_not_sleeve_thread),
    (bolts.PolymerOverTorque, bolts.polymer_over_torque),
    (documents.MakerDocumentMissing, documents.maker_document_missing),
    (grease.GreaseMix, grease.grease_mix),
    (seat.ShaftForm, seat.shaft_form),
    (seat.SeatOutsideTheMakers, seat.seat_outside_the_makers),
    (rings.SetScrewOnHardOrHollowShaft, rings.set_screw_on_hard_or_hollow_shaft),
    (rings.SpeedOverLocking, rings.speed_over_locking),
    (locks.NutSideAgainstPlantRule, locks.nut_side_against_plant_rule),
    (rings.LockTooWeak, rings.lock_too_weak),
    (clearance.SeatHoldsTooLittle, clearance.seat_holds_too_little),
    (loads.ShaftTooWeak, loads.shaft_too_weak),
    (clearance.RingStressTooHigh, clearance.ring_stress_too_high),
    (locks.SlotRoomBelowTravel, locks.slot_room_below_travel),
    (axial.FixedOnTheWrongSide, axial.fixed_on_the_wrong_side),
    (axial.FreeInNameOnly, axial.free_in_name_only),
    (axial.TakeUpWithoutFloat, axial.take_up_without_float),
    (housing.TakeUpTravelUsed, housing.take_up_travel_used),
    (housing.SealMisalignment, housing.seal_misalignment),
    (feet.FootSlips, feet.foot_slips),
    (feet.FootOpens, feet.foot_opens),
    (loads.SlopeOverCapability, loads.slope_over_capability),
    (loads.LoadTurnsWithTheRing, loads.load_turns_with_the_ring),
    (loads.MinimumLoad, loads.minimum_load),
    (loads.LifeTooShort, loads.life_too_short),
    (loads.StatedReactionOff, loads.stated_reaction_off),
    (clearance.VibrationHigh, clearance.vibration_high),
    (housing.FrameNotFlat, housing.frame_not_flat),
    (bolts.StainlessGall, bolts.stainless_gall),
    (bolts.TappedBaseEngagement, bolts.tapped_base_engagement),
    (bolts.TorqueToolRange, bolts.torque_tool_range),
    (grease.GreaseSpeed, grease.grease_speed),
    (grease.GreaseTemperature, grease.grease_temperature),
    (grease.GreaseOnSealed, grease.grease_on_sealed),
    (documents.GunNotWeighed, documents.gun_not_weighed),
    (documents.MakerDocumentPastReview, documents.maker_document_past_review),
    (documents.RecordOfAnOldIssue, documents.record_of_an_old_issue),
    (seat.MeasuredWhenWarm, seat.measured_when_warm),
    (loads.RotorWithoutItsWeight, loads.rotor_without_its_weight),
    (locks.NutSideAgainstRotation, locks.nut_side_against_rotation),
)
_RANK = {rule: number for number, (rule, _) in enumerate(RULES)}


def findings(plant: Plant, machines: Sequence[MachineSheets]) -> tuple[Judged, ...]:
    """Every finding of the plant, holds first, then by consequence and tag; each held against what was accepted."""
    found = [judged(plant, finding) for machine in machines for _, looks in RULES for finding in looks(plant, machine)]
    return tuple(sorted(_without_doubles(found), key=lambda f: (LEVELS.index(f.rule.LEVEL), _RANK[type(f.rule)], f.rule.at)))


def held_jobs(found: Iterable[Judged], identity: str) -> dict[str, list[Judged]]:
    """The jobs held at a position, each with the findings that hold it. A finding at a shaft or machine holds all its positions."""
    held: dict[str, list[Judged]] = {}
    tag = identity.partition("/")[0]
    for finding in found:
        at = str(finding.rule.at)
        covers = at == identity or at == tag or (at.startswith(f"{tag}/") and not at.rpartition("/")[2].isupper())
        if covers:
            for job in finding.holds:
                held.setdefault(job, []).append(finding)
    return {job: held[job] for job in JOBS if job in held}


def _without_doubles(found: Iterable[Judged]) -> list[Judged]:
    """A turn from a table for another thread is one fault: that its figures are missing too is not said again."""
    kept = list(found)
    threads = {f.rule.at for f in kept if isinstance(f.rule, locks.NutThreadNotSleeveThread)}
    return [f for f in kept if not (isinstance(f.rule, documents.MakerDocumentMissing) and f.rule.at in threads)]
