"""What is said beside the figures: lower bounds, cold stores, how a source is graded."""

GRADES = (("common practice", "common practice"), ("from memory", "from memory"),
          ("computed", "computed"), ("own tests", "own tests"), ("published", "published"))
COLD_STORE_C, WARM_FIXER_C = 5.0, 29.0

# What a bottle whose history is not known has at least.
AT_LEAST = ("wear_films_per_litre", "wear_factor", "films_done", "oxygen_mmol_per_litre",
            "air_part", "standing_used", "silver_g_per_litre", "bromide_mg_per_litre")
AT_LEAST_UNDATED = ("age_days", "age_part")


def lower_bounds(batch):
    """The report's figures that are lower bounds for this batch."""
    if not (batch.found or batch.doubtful):
        return ()
    return AT_LEAST if batch.dated else AT_LEAST + AT_LEAST_UNDATED


def store_warning(role, celsius):
    """Why a place is wrong to store at, or None."""
    if celsius < COLD_STORE_C:
        return "too-cold"
    return "too-warm" if role == "fixer" and celsius > WARM_FIXER_C else None


def extrapolates(batch):
    """Below half full no published figure speaks for the bottle any more."""
    return batch.volume < 0.5 * batch.vessel.capacity


def grade(source):
    """What a source line says of itself by how it starts; None for any other line."""
    text = source.strip().lower()
    return next((word for start, word in GRADES if text.startswith(start)), None)
