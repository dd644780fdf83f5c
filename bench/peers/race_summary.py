"""Median time per state of every route in a race, and how many times faster the folded kernel is, round by round.

Routes that read the slowest velocity besides are set against the folded one that does too."""
import csv
import statistics
import sys

with open(sys.argv[1]) as file:
    rows = list(csv.DictReader(file))
for tree in dict.fromkeys(row["tree"] for row in rows):
    times = {}
    for row in rows:
        if row["tree"] == tree:
            times.setdefault(row["route"], []).append(float(row["us_per_state"]))
    for route, values in times.items():
        folded = times["folded-slowest" if route.endswith("slowest") else "folded"]
        ratios = [value / own for value, own in zip(values, folded)]
        print(
            f"{tree} {route:18s} median {statistics.median(values):9.3f} us/state"
            f" {1e6 / statistics.median(values):9.0f} states/s;"
            f" folded is {statistics.median(ratios):7.1f} times as fast ({min(ratios):.1f} to {max(ratios):.1f})"
        )
