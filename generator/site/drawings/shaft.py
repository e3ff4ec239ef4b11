"""The shaft drawn in both layouts, lying or standing."""

from __future__ import annotations

from markupsafe import Markup

from generator.site.drawings.pen import WIDE, Layout, both
from generator.site.drawings.shaft_level import level
from generator.site.drawings.shaft_upright import upright
from generator.site.drawings.strip import Strip, description, title


def shaft(strip: Strip, name: str) -> Markup:
    """Both layouts; ids are made from the name, which is to be the page's only one of its kind."""
    return both(lambda layout: shaft_for(strip, name, layout), WIDE)


def shaft_for(strip: Strip, name: str, layout: Layout) -> Markup:
    """The drawing for one layout."""
    draw = upright if strip.upright else level
    return draw(strip, name, layout, title(strip), " ".join(description(strip)))
