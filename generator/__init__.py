"""Seatbook: a plant's own mounting standard for housed bearings, made from its equipment YAML."""

__version__ = "1.0.0"
