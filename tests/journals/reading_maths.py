"""Numerical tools of the reference reading, all in the standard library.

Where a routine could be written in more than one way, the slower and plainer
way is taken here, so that it shares no shortcut with the program.
"""

import math


def bisect(function, low, high, rounds=200):
    """Root of an increasing function between low and high, to the last bit."""
    for _ in range(rounds):
        middle = 0.5 * (low + high)
        if middle <= low or middle >= high:
            break
        if function(middle) < 0.0:
            low = middle
        else:
            high = middle
    return 0.5 * (low + high)


def incomplete_beta(x, m, n):
    """I_x(m, n) for whole m and n >= 1: the chance that the m-th success
    comes before the n-th failure, a finite sum of positive terms."""
    if x <= 0.0:
        return 0.0
    if x >= 1.0:
        return 1.0
    log_x, log_rest = math.log(x), math.log1p(-x)
    terms = [math.exp(_log_choose(m + j - 1, j) + m * log_x + j * log_rest)
             for j in range(n)]
    return min(1.0, math.fsum(terms))


def _log_choose(total, part):
    """Logarithm of a binomial coefficient, from the exact whole number."""
    return math.log(math.comb(total, part))


def beta_quantile(chance, m, n):
    """The x at which I_x(m, n) is the given chance."""
    return bisect(lambda x: incomplete_beta(x, m, n) - chance, 0.0, 1.0)


def student_two_sided(t, freedom):
    """P(|T| < t) for a whole number of degrees of freedom: the finite
    trigonometric sums for odd and even degrees."""
    angle = math.atan(t / math.sqrt(freedom))
    sine, cosine = math.sin(angle), math.cos(angle)
    if freedom == 1:
        return 2.0 * angle / math.pi
    if freedom % 2:
        term = total = cosine
        for k in range(3, freedom - 1, 2):
            term *= cosine * cosine * (k - 1) / k
            total += term
        return 2.0 / math.pi * (angle + sine * total)
    term = total = 1.0
    for k in range(2, freedom - 1, 2):
        term *= cosine * cosine * (k - 1) / k
        total += term
    return sine * total


def student_quantile_two_sided(share, freedom):
    """The t that holds the given share between -t and t."""
    high = 1.0
    while student_two_sided(high, freedom) < share:
        high *= 2.0
    return bisect(lambda t: student_two_sided(t, freedom) - share, 0.0, high)


class Line:
    """Ordinary least squares, with the edges of its prediction band."""

    def __init__(self, points):
        xs = [x for x, _ in points]
        ys = [y for _, y in points]
        self.count = len(points)
        self.mean_x = math.fsum(xs) / self.count
        self.mean_y = math.fsum(ys) / self.count
        self.sxx = math.fsum((x - self.mean_x) ** 2 for x in xs)
        self.slope = math.fsum((x - self.mean_x) * (y - self.mean_y)
                               for x, y in points) / self.sxx
        self.intercept = self.mean_y - self.slope * self.mean_x
        rest = math.fsum((y - self.at(x)) ** 2 for x, y in points)
        self.residual = math.sqrt(rest / (self.count - 2))

    def at(self, x):
        return self.mean_y + self.slope * (x - self.mean_x)

    def rising_crossing(self, level, side, share=0.90):
        """Where an edge of the band (side +1 upper, -1 lower) comes up to
        the level; None where it never does.

        The upper edge is convex, so it rises only to the right of its lowest
        point; the lower edge is concave and rises only to the left of its
        highest point. Each has at most one rising crossing."""
        spread = student_quantile_two_sided(share, self.count - 2) * self.residual
        floor = 1.0 + 1.0 / self.count
        root_sxx = math.sqrt(self.sxx)
        steep = spread / root_sxx

        def edge(x):
            u = (x - self.mean_x) / root_sxx
            return self.at(x) + side * spread * math.sqrt(floor + u * u) - level

        if self.slope <= -steep:
            return None
        if self.slope >= steep:
            start, directions = self.mean_x, (-1.0, 1.0)
        else:
            turn = (self.slope * math.sqrt(floor)
                    / math.sqrt(steep * steep - self.slope * self.slope))
            start = self.mean_x - side * turn * root_sxx
            directions = (0.0, 1.0) if side > 0 else (-1.0, 0.0)
        low = _reach(edge, start, directions[0], want_negative=True)
        high = _reach(edge, start, directions[1], want_negative=False)
        if low is None or high is None:
            return None
        return bisect(edge, low, high)


def _reach(function, start, direction, want_negative):
    """Walk out in doubling steps until the function has the sign wanted."""
    step, place = 1.0, start
    for _ in range(60):
        value = function(place)
        if (value < 0.0) if want_negative else (value >= 0.0):
            return place
        if direction == 0.0:
            return None
        place = start + direction * step
        step *= 2.0
    return None
