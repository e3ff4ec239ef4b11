"""The one style of all drawings. It knows the page's ink, paper and accent and no other colour."""

from __future__ import annotations

from markupsafe import Markup

from generator.site.drawings.pen import NARROW, WIDE, Layout

_MARKS = """
.pic{display:block;width:100%;height:auto}
.pic .part{fill:var(--paper);stroke:var(--ink);stroke-width:3;stroke-linejoin:round}
.pic .solid{fill:var(--ink);stroke:var(--ink);stroke-width:3;stroke-linejoin:round}
.pic .edge{fill:none;stroke:var(--ink);stroke-width:3}
.pic .dim{fill:none;stroke:var(--ink);stroke-width:1.5}
.pic .grid{fill:none;stroke:var(--ink);stroke-width:1}
.pic .axis{fill:none;stroke:var(--ink);stroke-width:1.5;stroke-dasharray:18 5 3 5}
.pic .hidden{fill:none;stroke:var(--ink);stroke-width:1.5;stroke-dasharray:5 4}
.pic .mark{fill:none;stroke:var(--accent);stroke-width:4}
.pic .tip{fill:var(--ink);stroke:none}
.pic .mark-tip{fill:var(--accent);stroke:none}
.pic .blank{fill:var(--paper);stroke:none}
.pic .hatch{fill:none;stroke:var(--ink)}
.pic.pic text{fill:var(--ink);stroke:var(--paper);stroke-width:5px;stroke-linejoin:round;paint-order:stroke}
.pic text{font-variant-numeric:tabular-nums}
.pic.pic text.bold,.pic.pic text.strong,.pic.pic text.letter{font-weight:700}
.pic .field{fill:var(--paper);stroke:var(--ink);stroke-width:3}
.pic a{text-decoration:none}
.pic a .field{fill:var(--field,var(--paper));stroke:var(--accent);stroke-width:3}
.pic.pic a text{fill:var(--label,var(--accent));stroke:none}
.pic a:focus-visible .field{stroke:var(--ink);stroke-width:6}
@media (max-width:59.99rem){.pic.wide{display:none}}
@media (min-width:60rem){.pic.narrow{display:none}}
@media print{.pic.wide{display:block}.pic.narrow{display:none}}
"""


def style() -> Markup:
    """The style element a page with drawings carries once."""
    return Markup("<style>" + "".join((_MARKS + _sizes(WIDE) + _sizes(NARROW)).strip().splitlines()) + "</style>")


def _sizes(layout: Layout) -> str:
    sizes = {"text": layout.text, "text.strong": layout.strong, "text.letter": layout.letter}
    return "".join(f".pic.{layout.name} {which}{{font-size:{size}px}}\n" for which, size in sizes.items())
