#pragma once

#include <boardmark/core/trial/trial.hpp>

#include "../reading/file_context.hpp"

#include <set>
#include <string>
#include <vector>

namespace boardmark::input {

/// Reads what went into the mixer of a trial, against the materials of its mix.
class BatchedReader {
public:
    BatchedReader(const FileContext& context, const core::AnyCompleteMix& mix,
                  std::string mix_file);

    /// Puts water and materials into the trial. Where one is missing or wrong its fault is told.
    void read(core::Trial& trial) const;

private:
    std::optional<core::BatchedMaterial> read_material(const core::Material& material) const;
    void demand_amount(std::string_view name, const std::string& why,
                       const std::string& advice) const;
    std::set<std::string> refuse_strangers() const;
    bool refuse_strange_moistures() const;
    void demand_moisture(const core::Material& aggregate) const;
    bool has_moisture_of_the_day(const core::Material& material) const;
    void demand_one_system() const;
    void ask_back_moistures() const;

    const FileContext& context_;
    std::string mix_file_;
    std::vector<core::Material> materials_; ///< of the mix
    std::set<std::string> meant_;           ///< names that a misspelt one was meant to be
    bool moistures_are_told_;               ///< whether a fault of the moistures has been told
};

} // namespace boardmark::input
