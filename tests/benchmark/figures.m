% The formulas of formulas.py for Octave; reads mixes.csv, writes what it found and how fast.
given = dlmread('mixes.csv', ',', 1, 0);
best = Inf;
for run = 1:50
  begun = cputime();
  for again = 1:10
  fc = given(:, 1); slump = given(:, 2); cement = given(:, 3); slag = given(:, 4);
  dose = given(:, 5); modulus = given(:, 6); stone_density = given(:, 7);
  unit_water = 62.4; ounce = 231 / 128 / 1728;
  deviation = 480 * (1.16 + (18 - 15) / 5 * (1.08 - 1.16));
  three = fc + 1.34 * deviation;
  single = merge(fc <= 5000, fc + 2.33 * deviation - 500, 0.90 * fc + 2.33 * deviation);
  average = max(three, single);
  by_strength = merge(average > 6200, 0.36 + 0.04 * log(6900 ./ average) / log(6900 / 6200), ...
      merge(average >= 5400, 0.40 + 0.05 * log(6200 ./ average) / log(6200 / 5400), 0.45));
  w_cm = min(by_strength, 0.40);
  table = merge(slump <= 4 + 3 / 25.4, 305, 305 + (slump - 4) / 2 * 20);
  reduction = merge(dose <= 8, 8 + (dose - 4) / 4 * 8, 16 + (dose - 8) / 4 * 6);
  water = table .* (1 - reduction / 100);
  binder = water ./ w_cm;
  cement_mass = binder .* cement / 100;
  slag_mass = binder .* slag / 100;
  reducer_volume = dose .* binder * ounce / 100;
  reducer_mass = reducer_volume * 1.07 * unit_water;
  batched = water - reducer_mass * (1 - 0.35);
  coarse_volume = 0.90 - 0.1 * modulus;
  stone_mass = coarse_volume * 27 * 100 * 1.005;
  stone_volume = stone_mass ./ (stone_density * unit_water);
  solid = batched / unit_water + cement_mass / (3.15 * unit_water) + ...
      slag_mass / (2.90 * unit_water) + stone_volume + reducer_volume + 0.06 * 27;
  sand_mass = (27 - solid) * 2.64 * unit_water;
  total = batched + cement_mass + slag_mass + stone_mass + sand_mass + reducer_mass;
  density = total / 27;
  paste = (solid - stone_volume - 0.06 * 27) / 27 * 100;
  mortar = (27 - stone_volume) / 27 * 100;
  end
  best = min(best, (cputime() - begun) / 10);
end
printf('{"version": "%s", "mixes_a_second": %.0f, "sand": %.9g}\n', version(), ...
       rows(given) / best, sum(sand_mass) / rows(given));
