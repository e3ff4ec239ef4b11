"""The key terms of the work that a second language gives its own words for; a closed list."""

from __future__ import annotations

from generator.say import mark

TERMS: tuple[str, ...] = (
    mark("HELD"), mark("Stop and sign"), mark("isolate"), mark("try to start"), mark("fixed"), mark("free"), mark("float"), mark("hand tight"),
    mark("mark"), mark("turn"), mark("slot"), mark("nut"), mark("sleeve"), mark("shaft"), mark("bearing"), mark("housing"), mark("flange"), mark("gap"),
    mark("bolt"), mark("torque"), mark("set screw"), mark("collar"), mark("clearance"), mark("feeler"), mark("seal"), mark("grease"), mark("stroke"),
    mark("guard"), mark("load off"), mark("sheet"),
)  # fmt: skip
