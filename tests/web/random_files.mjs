// Mixes and walls drawn at random: files of ours with other figures, words, units and parts. Some
// fail, some are refused, for some nothing follows: all of that must be the same in two places.

// Numbers from 0 to 1 that follow from a seed alone (mulberry32, public domain).
export function drawn_from(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

export function drawer(draw) {
  const between = (low, high, decimals = 0) => (low + (high - low) * draw()).toFixed(decimals);
  const one_of = (...all) => all[Math.floor(draw() * all.length)];
  const perhaps = (words) => (draw() < 0.5 ? words : "");
  return { between, one_of, perhaps };
}

export function random_mix(draw) {
  const { between, one_of, perhaps } = drawer(draw);
  const si = draw() < 0.5;
  const slag = Math.floor(draw() * 60);
  const strength = si ? `${between(20, 45)} MPa` : `${between(2500, 6500)} psi`;
  const density = si ? `${between(1450, 1750)} kg/m3` : `${between(92, 108, 1)} lb/ft3`;
  return `boardmark: 1
title: "Quay terrace, draw ${between(0, 1e6)}"
reporting: ${si ? "si" : "us"}
requirements:
  code: ACI 318-19
  exposure: [${one_of("F0", "F1", "F2", "F3")}, ${one_of("S0", "S1", "S2")}, ${one_of("W0", "W1", "W2")}, ${one_of("C0", "C1", "C2")}]
  strength: ${strength}
${perhaps(si ? "  strength_curve: {0.36: 52 MPa, 0.40: 46 MPa, 0.47: 37.5 MPa}\n" : "  strength_curve: {0.36: 7500 psi, 0.40: 6700 psi, 0.47: 5450 psi}\n")}  slump: ${si ? `${between(25, 175)} mm` : one_of("2 in", "3 1/2 in", "4 in", "6 in")}
${perhaps("  finish: board-marked\n")}${perhaps(si ? "  section: {thickness: 250 mm, clear_bar_spacing: 120 mm, clear_cover: 50 mm}\n" : "  section: {thickness: 10 in, clear_bar_spacing: 5 in, clear_cover: 2 in}\n")}${perhaps("  placing: {air_temperature: 34 degF, wind: 12 mph, humidity: 50 %, haul: 30 min}\n")}materials:
  cement: {kind: portland cement, relative_density: ${between(3.05, 3.2, 3)}, price: ${between(100, 220)} USD/t, carbon: 0.92 kg/kg}
  slag: {kind: slag cement, relative_density: ${between(2.8, 2.95, 3)}}
  stone:
    kind: coarse aggregate
    nominal_max_size: ${si ? one_of("10 mm", "20 mm", "14 mm", "25 mm") : one_of("3/8 in", "1/2 in", "3/4 in", "1 in")}
    relative_density: ${between(2.5, 2.8, 3)}
    absorption: ${between(0.2, 2.5, 2)} %
    dry_rodded_density: ${density}
    moisture: ${between(0, 4, 2)} %
  sand:
    kind: fine aggregate
    relative_density: ${between(2.55, 2.7, 3)}
    absorption: ${between(0.3, 2, 2)} %
    ${one_of(`fineness_modulus: ${between(2.3, 3.1, 2)}`, "sieves: {9.5 mm: 100 %, 4.75 mm: 97 %, 2.36 mm: 84 %, 1.18 mm: 68 %, 0.6 mm: 46 %, 0.3 mm: 18 %, 0.15 mm: 5 %}")}
    moisture: ${between(0, 8, 2)} %
  reducer: {kind: high-range water reducer, relative_density: 1.07, solids: ${between(20, 45)} %, water_reduction: {4 fl oz/cwt: 8 %, 8 fl oz/cwt: ${between(12, 18)} %, 12 fl oz/cwt: 22 %}}
  air_agent: {kind: air-entraining admixture, relative_density: 1.01, solids: 8 %}
mixture:
  binder: {cement: ${100 - slag} %, slag: ${slag} %}
  coarse: {stone: 100 %}
  fine: {sand: 100 %}
  admixtures: {reducer: ${between(2, 12, 1)} fl oz/cwt, air_agent: as needed}
${perhaps(`selections: {w_cm: ${between(0.34, 0.55, 3)}}\n`)}`;
}

// The starter's wall with other figures, without some of its keys.
export function random_wall(draw, starter) {
  const { between, one_of } = drawer(draw);
  const figures = {
    length: () => `${between(8, 70)} ft ${between(0, 11)} in`,
    height: () => `${between(2, 12)} ft`,
    thickness: () => `${between(10, 16)} in`,
    shows: () => one_of("one face", "both faces"),
    reporting: () => one_of("us", "si"),
    face_width: () => one_of("3 1/2 in", "5 1/2 in", "7 1/4 in", "140 mm"),
    direction: () => (draw() < 0.2 ? "vertical" : "horizontal"), // standing boards have no courses: refused
    spoiled: () => `${between(0, 15)} %`,
    across: () => `${between(12, 24)} in`,
    up: () => `${between(16, 24)} in`,
    working_load: () => `${between(2000, 5000)} lbf`,
    cover: () => `${between(2, 3, 1)} in`,
    rise: () => `${between(2, 10, 1)} ft/h`,
    output: () => `${between(3, 20)} yd3/h`,
    lift: () => `${between(12, 30)} in`,
    concrete_temperature: () => `${between(45, 90)} degF`,
    lowest_air: () => `${between(25, 60)} degF`,
    form_pressure: () => `${between(500, 1500)} psf`,
    waste: () => `${between(0, 12, 1)} %`,
  };
  let wall_left = true; // the first thickness is the wall's, the boards keep theirs
  return starter.split("\n").flatMap((line) => {
    const [, indent, key] = /^( *)([a-z_]+): [^{]/.exec(line) ?? [];
    const may_go = ["uses", "first", "lift", "season", "humidity", "wind", "lowest_air", "form_pressure"];
    if (may_go.includes(key) && draw() < 0.15) return [];
    const is_wall = key !== "thickness" || wall_left;
    wall_left = wall_left && key !== "thickness";
    if (!figures[key] || draw() < 0.3 || !is_wall) return [line];
    return [`${indent}${key}: ${figures[key]()}`];
  }).join("\n");
}
