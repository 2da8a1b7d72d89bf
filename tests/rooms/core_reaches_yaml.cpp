// As if a file of core parsed YAML.
#include <yaml-cpp/yaml.h>

bool parses() {
    return YAML::Load("a: 1").IsMap();
}
