"""The same discharges by SciPy's solve_ivp, its right side in plain Python (docs/discharge.md, "Equations", one well).

discharge.py CASES RTOL: a line of numbers a case, as SolverCases.cs writes them; prints the time of each end, s, and to the
standard error the processor time of all, s."""
import math
import sys
import time

from scipy.integrate import solve_ivp
from scipy.interpolate import PchipInterpolator

NAMES = ("ampere_hours r0 r1 tau1 r2 tau2 leads activation heat_capacity conductance capacity_factor resistance_factor "
         "cutoff most_amperes most_kelvin floor air charge kelvin limit").split()


def read(numbers):
    pack = {"groups": next(numbers)}
    pack.update((name, next(numbers)) for name in NAMES)
    volts = [(next(numbers), next(numbers)) for _ in range(int(next(numbers)))]
    parts = [(next(numbers), next(numbers)) for _ in range(int(next(numbers)))]
    pack["blocks"] = [tuple(next(numbers) for _ in range(4)) for _ in range(int(next(numbers)))]
    cubic = PchipInterpolator(*zip(*volts))
    pack["knots"], pack["cubic"] = list(cubic.x), [list(row) for row in cubic.c.T]
    pack["parts"] = parts
    return pack


def open_volts(pack, z):
    knots, i = pack["knots"], 0
    while i + 2 < len(knots) and z > knots[i + 1]:
        i += 1
    a, b, c, d = pack["cubic"][i]
    x = z - knots[i]
    return ((a * x + b) * x + c) * x + d


def usable(pack, kelvin):
    parts = pack["parts"]
    if not parts or kelvin >= parts[-1][0]:
        return parts[-1][1] if parts else 1.0
    if kelvin <= parts[0][0]:
        return parts[0][1]
    for (low, one), (high, other) in zip(parts, parts[1:]):
        if kelvin <= high:
            return one + (other - one) * (kelvin - low) / (high - low)


def solve(pack, block, y):
    z, v1, v2, kelvin = y
    _, watts, amperes, siemens = block
    growth = max(pack["floor"], math.exp(pack["activation"] / 8.314462618 * (1 / kelvin - 1 / 298.15)))
    growth *= pack["resistance_factor"]
    rest = open_volts(pack, z)
    e, r = pack["groups"] * (rest - v1 - v2), pack["groups"] * pack["r0"] * growth + pack["leads"]
    a, b = 1 + siemens * r, e - amperes * r
    root = b * b - 4 * a * watts * r
    volts = (b + math.sqrt(max(root, 0))) / (2 * a)
    current = amperes + siemens * volts + watts / volts
    room = b - 2 * math.sqrt(a * watts * r) if watts > 0 else 1.0
    return volts, current, rest, growth, room


def rates(t, y, pack, block):
    _, current, rest, growth, _ = solve(pack, block, y)
    z, v1, v2, kelvin = y
    group = rest - current * pack["r0"] * growth - v1 - v2
    return (-current / (3600 * pack["ampere_hours"] * pack["capacity_factor"] * usable(pack, kelvin)),
            (current * pack["r1"] * growth - v1) / pack["tau1"],
            (current * pack["r2"] * growth - v2) / pack["tau2"],
            (pack["groups"] * current * (rest - group) + current * current * pack["leads"]
             - pack["conductance"] * (kelvin - pack["air"])) / pack["heat_capacity"])


EVENTS = [lambda t, y, pack, block: solve(pack, block, y)[4],
          lambda t, y, pack, block: solve(pack, block, y)[0] - pack["cutoff"],
          lambda t, y, pack, block: y[0],
          lambda t, y, pack, block: pack["most_amperes"] - solve(pack, block, y)[1],
          lambda t, y, pack, block: pack["most_kelvin"] - y[3]]
for event in EVENTS:
    event.terminal = True


def end_of(pack, rtol):
    y, t, number = (pack["charge"], 0.0, 0.0, pack["kelvin"]), 0.0, 0
    absolute = (rtol * 1e-2, rtol * 1e-2, rtol * 1e-2, rtol)
    while t < pack["limit"]:
        block = pack["blocks"][number % len(pack["blocks"])]
        left = [event(t, y, pack, block) for event in EVENTS]
        if left[0] < 0 or min(left[1:]) <= 0:
            return t
        done = solve_ivp(rates, (t, min(t + block[0], pack["limit"])), y, "RK45", events=EVENTS, args=(pack, block), rtol=rtol,
                         atol=absolute)
        t, y, number = float(done.t[-1]), tuple(float(value) for value in done.y[:, -1]), number + 1
        if done.status == 1:
            return t
    return t


def main():
    with open(sys.argv[1], encoding="ascii") as file:
        numbers = iter([float(word) for word in file.read().split()])
    count = int(next(numbers) * 1000 + next(numbers))
    packs = [read(numbers) for _ in range(count)]
    begun = time.process_time()
    ends = [end_of(pack, float(sys.argv[2])) for pack in packs]
    used = time.process_time() - begun
    print("\n".join(f"{end:.9g}" for end in ends))
    print(f"{used:.9g}", file=sys.stderr)


main()
