#include "starter_lines.hpp"

namespace boardmark::input {
namespace {

// Three trials at three ratios, from which a line of strength follows, and three batches of the
// work.
constexpr StarterLine results_lines[] = {
    {"boardmark", "1"},
    {"title", "\"Name of the job, cylinders\""},
    {"reporting", "us", "si"},
    {"code", "ACI 318-19"},
    {"strength", "4500 psi", "31 MPa"},
    {"strength_age", "28 d"},
    {"specimen", "cylinder 4 in x 8 in", "cylinder 100 mm x 200 mm"},

    {"batches"},
    {"batches.T-1"},
    {"batches.T-1.cast", "2025-03-02"},
    {"batches.T-1.purpose", "trial"},
    {"batches.T-1.w_cm", "0.38"},
    {"batches.T-1.air", "6.0 %"},
    {"batches.T-2", "{cast: 2025-03-02, purpose: trial, w_cm: 0.42, air: 6.0 %}"},
    {"batches.T-3", "{cast: 2025-03-02, purpose: trial, w_cm: 0.47, air: 6.2 %}"},
    {"batches.B-1", "{cast: 2025-04-01, w_cm: 0.45, air: 5.8 %}"},
    {"batches.B-2", "{cast: 2025-04-08, w_cm: 0.44, air: 6.1 %}"},
    {"batches.B-3", "{cast: 2025-04-15, w_cm: 0.45, air: 6.2 %}"},

    {"specimens"},
    {"specimens.T-1/1"},
    {"specimens.T-1/1.batch", "T-1"},
    {"specimens.T-1/1.age", "28 d"},
    {"specimens.T-1/1.strength", "6480 psi", "44.7 MPa"},
    {"specimens.T-1/2", "{batch: T-1, age: 28 d, strength: 6550 psi}",
     "{batch: T-1, age: 28 d, strength: 45.2 MPa}"},
    {"specimens.T-1/3", "{batch: T-1, age: 28 d, strength: 6410 psi}",
     "{batch: T-1, age: 28 d, strength: 44.2 MPa}"},
    {"specimens.T-2/1", "{batch: T-2, age: 28 d, strength: 5920 psi}",
     "{batch: T-2, age: 28 d, strength: 40.8 MPa}"},
    {"specimens.T-2/2", "{batch: T-2, age: 28 d, strength: 5850 psi}",
     "{batch: T-2, age: 28 d, strength: 40.3 MPa}"},
    {"specimens.T-2/3", "{batch: T-2, age: 28 d, strength: 5960 psi}",
     "{batch: T-2, age: 28 d, strength: 41.1 MPa}"},
    {"specimens.T-3/1", "{batch: T-3, age: 28 d, strength: 5230 psi}",
     "{batch: T-3, age: 28 d, strength: 36.1 MPa}"},
    {"specimens.T-3/2", "{batch: T-3, age: 28 d, strength: 5160 psi}",
     "{batch: T-3, age: 28 d, strength: 35.6 MPa}"},
    {"specimens.T-3/3", "{batch: T-3, age: 28 d, strength: 5200 psi}",
     "{batch: T-3, age: 28 d, strength: 35.9 MPa}"},
    {"specimens.B-1/1", "{batch: B-1, age: 28 d, strength: 5390 psi}",
     "{batch: B-1, age: 28 d, strength: 37.2 MPa}"},
    {"specimens.B-1/2", "{batch: B-1, age: 28 d, strength: 5460 psi}",
     "{batch: B-1, age: 28 d, strength: 37.6 MPa}"},
    {"specimens.B-1/3", "{batch: B-1, age: 28 d, strength: 5330 psi}",
     "{batch: B-1, age: 28 d, strength: 36.7 MPa}"},
    {"specimens.B-2/1", "{batch: B-2, age: 28 d, strength: 5710 psi}",
     "{batch: B-2, age: 28 d, strength: 39.4 MPa}"},
    {"specimens.B-2/2", "{batch: B-2, age: 28 d, strength: 5640 psi}",
     "{batch: B-2, age: 28 d, strength: 38.9 MPa}"},
    {"specimens.B-2/3", "{batch: B-2, age: 28 d, strength: 5680 psi}",
     "{batch: B-2, age: 28 d, strength: 39.2 MPa}"},
    {"specimens.B-3/1", "{batch: B-3, age: 28 d, strength: 5520 psi}",
     "{batch: B-3, age: 28 d, strength: 38.1 MPa}"},
    {"specimens.B-3/2", "{batch: B-3, age: 28 d, strength: 5440 psi}",
     "{batch: B-3, age: 28 d, strength: 37.5 MPa}"},
    {"specimens.B-3/3", "{batch: B-3, age: 28 d, strength: 5560 psi}",
     "{batch: B-3, age: 28 d, strength: 38.3 MPa}"},
};

constexpr std::string_view results_heading =
    "# A file of strength results to begin with. Every figure is an example: write your own "
    "tests.\n"
    "#   boardmark strength results.yaml   judges them and gives the line of strength over w/cm\n"
    "# A mix file reads that line with 'strength_curve: from results.yaml'.\n";

} // namespace

StarterFile results_starter() {
    return {results_heading, results_lines, strength_fields()};
}

} // namespace boardmark::input
