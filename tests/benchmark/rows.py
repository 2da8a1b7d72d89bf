"""Mixes for the benchmarks: examples/quay-wall.yaml with other figures, drawn by a seed.

rows.py COUNT > mixes.csv
"""
import csv
import random
import sys

HEADINGS = ["requirements.strength [psi]", "requirements.slump [in]",
            "mixture.binder.cement [%]", "mixture.binder.slag [%]",
            "mixture.admixtures.reducer [fl oz/cwt]", "materials.sand.fineness_modulus",
            "materials.stone.relative_density"]


def rows(count, seed=7):
    draw = random.Random(seed)
    for _ in range(count):
        slag = draw.randrange(0, 51)
        yield [draw.randrange(4000, 6001, 50), draw.choice([3, 3.5, 4, 5]), 100 - slag, slag,
               round(draw.uniform(4, 12), 1), round(draw.uniform(2.4, 3.0), 2),
               round(draw.uniform(2.55, 2.8), 3)]


if __name__ == "__main__":
    table = csv.writer(sys.stdout)
    table.writerow(HEADINGS)
    table.writerows(rows(int(sys.argv[1])))
