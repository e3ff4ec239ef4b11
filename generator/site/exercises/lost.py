"""What stops the building of a guide."""


class ExerciseLost(ValueError):
    """A guide names a machine, position, value or kind of work that is no more, or whose values are withheld: what it says would be stale."""
