// As if the reader looked up a published number.
#include <boardmark/reference/tables.hpp>

double looks_up() {
    return boardmark::reference::tables(boardmark::core::UnitSystem::si).water_density_kg_m3;
}
