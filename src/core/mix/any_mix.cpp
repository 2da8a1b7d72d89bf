#include <boardmark/core/mix/any_mix.hpp>

namespace boardmark::core {

std::vector<const Material*> materials_of(const Mix& mix) {
    std::vector<const Material*> materials;
    for (const auto* shares : {&mix.binder, &mix.coarse, &mix.fine}) {
        for (const Share& share : *shares) {
            materials.push_back(&*share.material);
        }
    }
    for (const Dosage& dosage : mix.admixtures) {
        materials.push_back(&*dosage.material);
    }
    return materials;
}

std::vector<const Material*> materials_of(const SubmittedMix& mix) {
    std::vector<const Material*> materials;
    for (const SubmittedAmount& amount : mix.amounts) {
        materials.push_back(&*amount.material);
    }
    return materials;
}

std::vector<const Material*> materials_of(const AnyCompleteMix& mix) {
    return std::visit([](const auto& either) { return materials_of(*either); }, mix);
}

} // namespace boardmark::core
