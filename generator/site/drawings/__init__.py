"""Drawings: pure functions of plain data to SVG, drawn to the values they say, in the page's own ink, paper and accent."""
