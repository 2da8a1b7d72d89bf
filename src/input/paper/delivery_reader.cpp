#include "delivery_reader.hpp"

#include "../values/section.hpp"

#include <cmath>

namespace boardmark::input {
namespace {

/// Prices of one supplier, by volume and in one currency.
class VolumePrices {
public:
    std::optional<double> per_m3(const Section& section, std::string_view key) {
        const Parsed* price = section.value(key);
        if (!price) {
            return std::nullopt;
        }
        if (price->dimension != units::Dimension::volume) {
            section.refuse(key, ": '" + price->text + "' is not by volume of concrete",
                           "write for example '9 USD/yd3'");
            return std::nullopt;
        }
        if (currency_.empty()) {
            currency_ = price->currency;
        } else if (price->currency != currency_) {
            section.refuse(key, " is in " + price->currency + ", a price before it in " + currency_,
                           "write all prices in one currency: rates change, and none is kept here");
        }
        return price->number;
    }

    const std::string& currency() const { return currency_; }

private:
    std::string currency_;
};

std::optional<core::Day> day_of(const Section& section, std::string_view key) {
    const auto days = section.number(key);
    return days ? std::optional{core::Day{std::chrono::days{std::lround(*days)}}} : std::nullopt;
}

} // namespace

std::optional<core::DeliveryTerms> read_delivery(const FileContext& context) {
    const Section section{context, {"supply"}};
    if (!section.stands()) {
        return std::nullopt;
    }
    VolumePrices prices;
    core::DeliveryTerms terms;
    terms.concrete_per_m3 = prices.per_m3(section, "concrete");
    terms.haul_per_m3 = prices.per_m3(section, "haul");
    const Section surcharges = section.below("surcharges");
    if (surcharges.stands()) {
        for (const std::string_view name : surcharges.names()) {
            const Section one = surcharges.below(name);
            one.demand({"charge"});
            const auto per_m3 = prices.per_m3(one, "charge");
            const auto from = day_of(one, "from");
            const auto until = day_of(one, "until");
            if (from && until && *until < *from) {
                one.refuse("until", " is before 'from'", "check the two dates");
            }
            if (per_m3) {
                terms.surcharges.push_back({std::string{name}, *per_m3, from, until});
            }
        }
    }
    const Parsed* short_load = section.value("short_load_charge");
    if (short_load && short_load->dimension == units::Dimension::volume) {
        prices.per_m3(section, "short_load_charge"); // its currency is held against the others
    }
    terms.currency = prices.currency();
    const bool priced = terms.concrete_per_m3 || terms.haul_per_m3 || !terms.surcharges.empty();
    return priced ? std::optional{terms} : std::nullopt;
}

} // namespace boardmark::input
