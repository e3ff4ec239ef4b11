"""What hands do: steps composed from the sheets, in an order that is held by rules, with cautions and what to take along."""
