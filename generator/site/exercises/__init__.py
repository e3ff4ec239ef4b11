"""Exercises of the training pages, worked on machines of this plant: question, given values, and the answer from the same values as the pages."""

from generator.site.exercises.guide import TOPICS, exercise_for, guide_value, term, training_rules
from generator.site.exercises.lost import ExerciseLost
from generator.site.exercises.page_reading import page_reading
from generator.site.exercises.practice import practice_for

__all__ = ["TOPICS", "ExerciseLost", "exercise_for", "guide_value", "page_reading", "practice_for", "term", "training_rules"]
