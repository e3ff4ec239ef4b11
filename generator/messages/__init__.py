"""The catalogue of texts. `python -m generator.messages` makes `seatbook.pot` anew from the program."""
