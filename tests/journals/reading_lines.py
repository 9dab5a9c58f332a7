"""Checks the lines of a journal that are not events, each by itself and against what it names."""

ROLES = ("developer", "stop", "fixer", "wash-aid", "wetting-agent", "other")
MATERIALS = ("glass", "pet", "hdpe", "ldpe", "pp")
FORMS = ("powder", "liquid", "crystals")
HOLDS = ("developer", "fixer", "stop", "wash", "other")
MARKS = ("thin", "dense", "stained", "not-clear", "uneven")
CUPBOARD = ("packet", "chemical", "supply")

# Lines that may be given anew with `replaces`, or withdrawn.
REPLACEABLE = CUPBOARD + ("barcode", "work", "vessel", "container")


def read_solution(f, book):
    f.text("name")
    f.text("role", among=ROLES)
    f.number("capacity_films_per_litre", required=False, above=0.0)
    wear = f.within("wear")
    rule = wear.text("rule", among=("none", "per-film", "compound", "steps"))
    if rule in ("per-film", "compound"):
        wear.number("percent", low=0.0)
    if rule == "steps":
        for one in wear.each("steps"):
            one.number("from_films_per_litre", low=0.0)
            one.number("factor", above=0.0)
    if f.has("keeping"):
        keeping = f.within("keeping")
        full = keeping.number("full_days", above=0.0)
        half = keeping.number("half_days", required=False, above=0.0)
        keeping.number("tray_hours", required=False, above=0.0)
        if half is not None and half >= full:
            keeping.refuse("half_days", "not below the full bottle's")
    for field in ("q10", "oxygen_factor", "fresh_clearing_s", "silver_limit_g_per_litre",
                  "tabular_factor", "replenish_ml_per_film", "one_shot_ml_per_film",
                  "turnover_limit"):
        f.number(field, required=False, above=0.0)
    f.number("fix_min_s", required=False, low=1.0)
    for field in ("silver_g_per_film", "bromide_mg_per_film"):
        f.number(field, required=False, low=0.0)
    f.text("fixer_kind", required=False, among=("acid", "alkaline"))
    f.text("form", required=False, among=FORMS)
    for field in ("replaces", "replenisher"):
        if f.has(field) and f.text(field) not in book.solutions:
            f.refuse(field, "unknown")
    if f.has("replenisher") and not f.has("replenish_ml_per_film"):
        f.refuse("replenish_ml_per_film", "a replenisher without its rate")


def read_vessel(f, book):
    f.text("name")
    f.number("capacity_ml", above=0.0)
    f.text("material", among=MATERIALS)
    f.number("wall_mm", required=False, above=0.0)
    f.number("permeability", required=False, low=0.0)
    f.number("cap_cm3_day", required=False, low=0.0)
    f.truth("squeezed")


def read_packet(f, book):
    if f.text("solution") not in book.solutions:
        f.refuse("solution", "unknown")
    f.text("form", required=False, among=FORMS)
    if f.has("volume_ml"):
        f.number("volume_ml", above=0.0)
        f.number("opened_days", required=False, above=0.0)
        f.number("makes_ml", required=False, above=0.0)
    else:
        f.number("makes_ml", above=0.0)
    f.cost()


def read_chemical(f, book):
    f.text("name")
    f.number("grams", required=False, low=0.0)
    f.cost()


def read_supply(f, book):
    f.text("name")
    f.text("unit", required=False)
    f.number("amount", required=False, low=0.0)
    f.cost()


def read_barcode(f, book):
    f.text("code")
    if not book.names(f.text("of"), CUPBOARD + ("solution",)):
        f.refuse("of", "unknown")
    f.number("amount", required=False, above=0.0)


def read_work(f, book):
    f.time("at")
    f.number("films", required=False, low=0.0)
    for field in ("rule", "developer", "name"):
        f.text(field, required=False)


def read_container(f, book):
    f.text("name")
    f.text("holds", among=HOLDS)
    f.number("capacity_ml", above=0.0)
    f.text("place", required=False)


def read_run_times(f, book):
    f.text("run")
    f.number("tank_ml", required=False, above=0.0)
    f.number("temperature_c", required=False)
    for one in f.each("steps"):
        one.text("step")
        one.number("planned_s", low=0.0)
        one.number("real_s", low=0.0)


def read_film(f, book):
    for field in ("run", "format", "name", "notes"):
        f.text(field, required=False)


def read_development_time(f, book):
    f.text("film")
    f.text("developer")
    f.each("times")


def read_film_mark(f, book):
    if f.has("takes_back"):
        if not book.names(f.text("takes_back"), ("film-mark",)):
            f.refuse("takes_back", "unknown")
        return
    f.time("at")
    f.text("mark", among=MARKS)
    if not book.names(f.text("film"), ("film",)):
        f.refuse("film", "unknown")


READERS = {"solution": read_solution, "vessel": read_vessel, "packet": read_packet,
           "chemical": read_chemical, "supply": read_supply, "barcode": read_barcode,
           "work": read_work, "container": read_container, "run-times": read_run_times,
           "film": read_film, "development-time": read_development_time,
           "film-mark": read_film_mark}


def identity(f, kind):
    """What a line is known by: its id, or what stands for it in lines that need none."""
    if not f.has("id"):
        for instead in {"barcode": ("code",), "run-times": ("run",),
                        "chemical": ("name",)}.get(kind, ()):
            return f.text(instead)
    return f.text("id")


def read_line(f, kind, book):
    """Checks one line. Returns whether it gives the thing (a withdrawal takes it away)."""
    if kind in REPLACEABLE:
        withdrawn = f.truth("withdrawn")
        if f.has("replaces") or withdrawn:
            # What is replaced keeps its figures for the events that name it, so only the
            # reference matters here.
            if not book.names(f.text("replaces"), (kind,)):
                f.refuse("replaces", "unknown")
        if withdrawn:
            return False
    READERS[kind](f, book)
    return True
