#include <boardmark/core/paper/job_papers.hpp>

#include "faults.hpp"

namespace boardmark::core {
namespace {

void find_day_fault(Field field, const std::optional<Day>& day, const FaultList& list) {
    constexpr int first_year = 1900;
    constexpr int last_year = 2999;
    if (day) {
        const int year = static_cast<int>(std::chrono::year_month_day{*day}.year());
        if (year < first_year || year > last_year) {
            list.impossible(field, "is a day of no paper: years 1900 to 2999 are read");
        }
    }
}

void find_delivery_faults(const DeliveryTerms& terms, const FaultList& list) {
    constexpr Bounds price{.low = 0, .high = 1e15};
    list.hold(Field::delivery, terms.concrete_per_m3, price);
    list.hold(Field::delivery, terms.haul_per_m3, price);
    for (const Surcharge& surcharge : terms.surcharges) {
        list.hold(Field::delivery, surcharge.per_m3, price);
        if (surcharge.from && surcharge.until && *surcharge.until < *surcharge.from) {
            list.impossible(Field::delivery, "has a surcharge that ends before it begins");
        }
    }
}

} // namespace

void find_paper_faults(const JobPapers& papers, const FaultList& list) {
    for (const auto& [name, dated] : papers.materials) {
        for (const auto& day :
             {dated.mill_certificate, dated.report, dated.certificate, dated.reactivity}) {
            find_day_fault(Field::papers, day, list);
        }
    }
    find_day_fault(Field::papers, papers.trial_batches, list);
    find_day_fault(Field::papers, papers.records, list);
    find_day_fault(Field::schedule, papers.first_pour, list);
    find_day_fault(Field::schedule, papers.mockup, list);
    if (papers.pour_days && *papers.pour_days < 1) {
        list.impossible(Field::schedule, "has no day on which concrete is placed");
    }
    if (papers.first_pour && papers.mockup && *papers.mockup >= *papers.first_pour) {
        list.impossible(Field::schedule, "has a mock-up that is not before the first pour");
    }
    for (const auto& [paper, age] : papers.ages) {
        if (age.months < 0 || age.days < 0) {
            list.impossible(Field::papers, "has an age below zero");
        }
    }
    if (papers.delivery) {
        find_delivery_faults(*papers.delivery, list);
    }
}

} // namespace boardmark::core
