"""The finder: one search box over machines, positions, designations, documents, findings, glossary and guides."""
