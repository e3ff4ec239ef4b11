"""A gloved hand: it touches only what is on the screen, large enough and not covered, and it counts."""

from __future__ import annotations

from playwright.sync_api import Locator, Page

# 12 mm on a 15.4 inch screen of 1280 px: the floor for a finger in a thin glove; common practice, no source
LEAST = 47.5
BOUNCE = 400
_UNCOVERED = "(place, at) => { const top = document.elementFromPoint(at.x, at.y); return !!top && place.contains(top); }"


class Hand:
    """One hand at one page; the clock goes on between touches, so that the next is no bounce of the last."""

    def __init__(self, page: Page) -> None:
        self.page, self.touches = page, 0
        page.clock.install()

    def touch(self, place: Locator, least: float = LEAST) -> None:
        """Touch the middle of something visible."""
        box, view = place.bounding_box(), self.page.viewport_size
        assert box is not None and view is not None, "not shown"
        at = {"x": box["x"] + box["width"] / 2, "y": box["y"] + box["height"] / 2}
        assert 0 <= at["x"] <= view["width"] and 0 <= at["y"] <= view["height"], "not on the screen"
        assert box["height"] >= least, f"{box['height']:.0f} px high"
        assert place.evaluate(_UNCOVERED, at), "covered"
        self.page.clock.fast_forward(BOUNCE)
        self.page.touchscreen.tap(at["x"], at["y"])
        self.touches += 1

    def pull_up(self) -> None:
        """Pull the page up by most of a screen; counts as a touch."""
        self.page.mouse.wheel(0, 600)
        self.page.wait_for_timeout(100)
        self.touches += 1

    def sees(self, place: Locator) -> bool:
        """Whether the whole of it is on the screen, uncovered."""
        box, view = place.bounding_box(), self.page.viewport_size
        if box is None or view is None or box["y"] < 0 or box["y"] + box["height"] > view["height"]:
            return False
        return bool(place.evaluate(_UNCOVERED, {"x": box["x"] + box["width"] / 2, "y": box["y"] + box["height"] / 2}))
