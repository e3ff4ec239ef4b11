"""The template engine of our pages: autoescaped, strict about names, gettext from the first template on."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path
from typing import Any

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from markupsafe import Markup

from generator.safety import message
from generator.say import catalogue, say, second_says, second_tag
from generator.show import shown
from generator.terms import TERMS
from generator.work.cautions import banner

HERE = Path(__file__).parent


@cache
def environment() -> Environment:
    """One environment a run."""
    env = Environment(
        loader=FileSystemLoader([HERE / "templates", HERE / "pages"]),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        extensions=["jinja2.ext.i18n"],
    )
    env.install_gettext_translations(catalogue(), newstyle=False)  # type: ignore[attr-defined]
    env.filters["slug"] = slug
    env.globals["shown"] = shown
    env.globals["job_name"] = job_name
    env.globals["banner"] = banner
    env.globals |= {"second_says": second_says, "second_tag": second_tag, "key_terms": TERMS}
    return env


def rendered(template: str, **facts: Any) -> Markup:
    """A template filled."""
    return Markup(environment().get_template(template).render(**facts))


def safety_panel(identity: str) -> Markup:
    """A safety message as its panel, for a guide."""
    return Markup(environment().get_template("parts.html").module.safety(message(identity)))  # type: ignore[attr-defined]


def term_table() -> Markup:
    """The key terms with their words in the second language, for a guide; nothing where the plant has none."""
    return Markup(environment().get_template("parts.html").module.term_table().strip())  # type: ignore[attr-defined]


def slug(name: object) -> str:
    """A name as an anchor or part of an address."""
    return re.sub(r"[^a-z0-9]+", "-", str(name).lower()).strip("-") or "x"


def job_name(job: str) -> str:
    """A job as the crew calls it."""
    return {"put on": say("putting on"), "take off": say("taking off"), "grease": say("greasing"), "run": say("running")}[job]
