"""Why a publication did not happen; the site in place is as it was."""


class NotPublished(Exception):
    """What stopped it, and what would be right."""

    def __init__(self, wrong: str, right: str = "") -> None:
        self.wrong, self.right = wrong, right
        super().__init__(wrong)
