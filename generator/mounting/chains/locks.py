"""Chains on locks: threads, keys, seating torques."""

from typing import Annotated, NamedTuple

from generator.method import Is, chain
from generator.tables.look_ups import hex_key, nut_thread, screw_seating
from generator.value import Citation, Results


class NutThread(NamedTuple):
    diameter: Annotated[float, Is("major diameter", "D", "mm")]
    pitch: Annotated[float, Is("pitch", "P", "mm")]


@chain(Citation("ISO 2982-2; ANSI/ABMA 8.2", "", "threads of lock nuts", "from memory"))
def lock_nut_thread(nut: str) -> NutThread:
    """Thread of a standard lock nut by its number
    KM20, N-11, AN-17. The thin sleeve of a ball insert has a nut of its own: its thread must be read on the part."""
    diameter, pitch = nut_thread(nut)  # type: ignore[arg-type]
    return Results(diameter=diameter, pitch=pitch)  # type: ignore[return-value]


@chain(Citation("ISO 4026 to 4029; ASME B18.3", "", "socket sizes", "seen"))
def hex_key_size(screw: str) -> Annotated[float, Is("key size", "s", "mm")]:
    """Hex key of a set screw by its thread"""
    return hex_key(screw)  # type: ignore[arg-type, return-value]


class Seating(NamedTuple):
    seating: Annotated[float, Is("seating torque of the trade", "T", "N.m")]
    ceiling: Annotated[float, Is("torque that is never passed", r"T_{\max}", "N.m")]


@chain(Citation("ISO 898-5, 45H; Shigley Table 7-4", "", "", "from memory"))
def set_screw_seating(screw: str) -> Seating:
    """Seating torque of a set screw, beside the maker's
    The maker of the bearing gives the torque; this stands beside it for plausibility."""
    seating, ceiling, _ = screw_seating(screw)  # type: ignore[arg-type]
    return Results(seating=seating, ceiling=ceiling)  # type: ignore[return-value]
