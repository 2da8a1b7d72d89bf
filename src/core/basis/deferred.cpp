#include <boardmark/core/basis/deferred.hpp>

namespace boardmark::core {

KeptValue::KeptValue(std::function<Made()> make)
    : make_{std::move(make)} {}

KeptValue::KeptValue(Made made)
    : made_{std::move(made)} {}

const void* KeptValue::value() {
    const std::lock_guard alone{making_};
    if (!made_) {
        made_ = make_();
    }
    return made_.get();
}

} // namespace boardmark::core
