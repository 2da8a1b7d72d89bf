"""The figures of examples/quay-wall.yaml by other hands: ACI 211.1 as written in the sources that
data/ names, in US units, for columns of mixes at once. formulas.py COUNT times them with numpy;
`figures` is what measure.py holds the program's rows against, cell by cell.
"""
import json
import sys
import time

WATER = 62.4  # lb/ft3, data/water-density.yaml
OUNCE = 231 / 128 / 1728  # ft3


def figures(np, fc, slump, cement, slag, dose, modulus, stone_density):
    # ACI 301: 18 tests, 1.112 by the line between 15 and 20 tests.
    deviation = 480 * (1.16 + (18 - 15) / 5 * (1.08 - 1.16))
    three = fc + 1.34 * deviation
    single = np.where(fc <= 5000, fc + 2.33 * deviation - 500, 0.90 * fc + 2.33 * deviation)
    average = np.maximum(three, single)
    # Own trials: 6900, 6200, 5400 psi at 0.36, 0.40, 0.45; log strength linear between them.
    by_strength = np.where(
        average > 6200, 0.36 + 0.04 * np.log(6900 / average) / np.log(6900 / 6200),
        np.where(average >= 5400, 0.40 + 0.05 * np.log(6200 / average) / np.log(6200 / 5400), 0.45))
    w_cm = np.minimum(by_strength, 0.40)  # ACI 318-19 Table 19.3.2.1, C2
    # ACI 211.1 Table 6.3.3, 3/4 in, air-entrained: 305 lb/yd3 to 4 in, 325 from 6 in.
    table = np.where(slump <= 4 + 3 / 25.4, 305.0, 305 + (slump - 4) / 2 * 20)
    reduction = np.where(dose <= 8, 8 + (dose - 4) / 4 * 8, 16 + (dose - 8) / 4 * 6)
    water = table * (1 - reduction / 100)
    binder = water / w_cm
    cement_mass = binder * cement / 100
    slag_mass = binder * slag / 100
    reducer_volume = dose * OUNCE * binder / 100  # ft3/yd3
    reducer_mass = reducer_volume * 1.07 * WATER
    liquid = reducer_mass * (1 - 0.35)  # 35 % solids; counted in the mixing water
    batched = water - liquid
    coarse_volume = 0.90 - 0.1 * modulus  # Table 6.3.6, 3/4 in
    stone_mass = coarse_volume * 27 * 100 * 1.005
    solid = (batched / WATER + cement_mass / (3.15 * WATER) + slag_mass / (2.90 * WATER) +
             stone_mass / (stone_density * WATER) + reducer_volume + 0.06 * 27)
    sand_volume = 27 - solid
    sand_mass = sand_volume * 2.64 * WATER
    total = batched + cement_mass + slag_mass + stone_mass + sand_mass + reducer_mass
    paste = (solid - stone_mass / (stone_density * WATER) - 0.06 * 27) / 27 * 100
    mortar = (27 - stone_mass / (stone_density * WATER)) / 27 * 100
    return {"average_strength": average, "w_cm": w_cm, "water": water, "binder": binder,
            "coarse_volume": coarse_volume, "density": total / 27, "paste": paste,
            "mortar": mortar, "mass.water": batched, "mass.cement": cement_mass,
            "mass.slag": slag_mass, "mass.stone": stone_mass, "mass.sand": sand_mass,
            "mass.reducer": reducer_mass}


def columns(np, count):
    from rows import rows
    return [np.array(column, dtype=float) for column in zip(*rows(count))]


if __name__ == "__main__":
    import numpy
    count = 10_000 if len(sys.argv) < 2 else int(sys.argv[1])
    given = columns(numpy, count)
    best = float("inf")
    for _ in range(50):
        begun = time.process_time()
        for _ in range(10):
            found = figures(numpy, *given)
        best = min(best, (time.process_time() - begun) / 10)
    print(json.dumps({"version": numpy.__version__, "mixes_a_second": count / best,
                      "sand": float(found["mass.sand"].mean())}))
