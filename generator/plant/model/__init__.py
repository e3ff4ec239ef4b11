"""What may stand in a plant's files: one model a kind of file."""
