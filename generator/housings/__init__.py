"""The styles of housing, named in one list: how each is held, and so what its bolts must carry."""

from dataclasses import dataclass


@dataclass(frozen=True)
class Style:
    """A style of housing. `joint`: "base" (stands on its foot), "face" (bolted to a wall, load across the bolts), "guide" (slides), "bore" (sits in a bore)."""

    word: str
    joint: str
    tapped: bool = False

    @property
    def flange(self) -> bool:
        """Whether the second one on a shaft closes a gap as it is driven up."""
        return self.joint == "face"


HOUSINGS: tuple[Style, ...] = (
    Style("pillow block", "base"),
    Style("tapped base", "base", tapped=True),
    Style("two-bolt flange", "face"),
    Style("three-bolt flange", "face"),
    Style("four-bolt flange", "face"),
    Style("take-up", "guide"),
    Style("cartridge", "bore"),
    Style("split", "base"),
)


def style_of(word: object) -> Style:
    """The style under its word. Raises KeyError for a word that is none."""
    return {style.word: style for style in HOUSINGS}[str(word)]
