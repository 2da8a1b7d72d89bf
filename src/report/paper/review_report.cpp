#include <boardmark/report/paper/review_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>

#include "../writing/csv_cells.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "paper_flow.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace boardmark::report {
namespace {

using core::Measure;
using core::SubmittalReview;
using report::json_of;

std::string money(const std::string& currency, double per_m3, core::UnitSystem system) {
    return currency + " " + shown({per_m3, Measure::money}, system);
}

std::string counts(const SubmittalReview& review) {
    return fmt::format("{} to correct, {} to settle", review.faults.size(), review.remarks.size());
}

std::string price_text(const SubmittalReview& review, core::UnitSystem system) {
    return !review.delivered ? "not stated"
           : !review.delivered->whole
               ? "not whole"
               : money(review.delivered->currency, *review.delivered->whole, system);
}

Flow side_by_side(const ReviewResult& result, core::UnitSystem system) {
    Grid grid{{Align::left, Align::left, Align::right, Align::right, Align::right, Align::right,
               Align::left}};
    grid.head({"submittal", "answer", "w/cm", "cementitious", "air", "delivered", ""});
    for (const SubmittalReview& review : result.reviews) {
        const core::Totals& totals = review.proportions.totals;
        grid.add({review.label, std::string{name_of(review.verdict)},
                  shown({totals.w_cm, Measure::w_cm}, system),
                  shown({totals.binder_kg_m3, Measure::concentration}, system),
                  shown({review.proportions.selection.air_percent, Measure::percent}, system),
                  price_text(review, system), counts(review)});
    }
    return grid;
}

Flow price_flow(const core::DeliveredPrice& price, core::UnitSystem system) {
    Grid grid{{Align::left, Align::right}};
    const auto add = [&](const std::string& name, const std::optional<double>& per_m3) {
        if (per_m3) {
            grid.add({name, money(price.currency, *per_m3, system)});
        }
    };
    add("concrete", price.concrete);
    add("haul", price.haul);
    for (const core::Surcharge& surcharge : price.surcharges) {
        add(text::printable(surcharge.name), surcharge.per_m3);
    }
    add("short loads", price.short_loads);
    add("delivered", price.whole);
    Flow flow = grid;
    for (const std::string& missing : price.missing) {
        flow += paragraph("not known: " + text::printable(missing), list_item);
    }
    return flow;
}

Flow letter_flow(const SubmittalReview& review, core::UnitSystem system) {
    const std::size_t items = review.faults.size() + review.remarks.size();
    Flow flow;
    std::size_t told = 0;
    for (std::size_t i = 0; i < review.letter.size(); ++i) {
        const core::Phrase& phrase = review.letter[i];
        const bool heads = i == 0 || phrase.text.ends_with(':');
        const bool is_item = !heads && told < items;
        told += is_item ? 1 : 0;
        flow += paragraph(is_item ? fmt::format("{}. {}", told, words(phrase, system))
                                  : words(phrase, system),
                          is_item ? Indent{.first = "  ", .other = "     "} : Indent{});
    }
    return flow;
}

Flow review_flow(const ReviewResult& result, const SubmittalReview& review,
                 const TextStyle& style) {
    const bool alone = result.reviews.size() == 1;
    const std::string of = alone ? "" : " of " + text::printable(review.label);
    Flow flow = section("THE ANSWER" + of + ": " + std::string{name_of(review.verdict)}) +
                letter_flow(review, style.system);
    if (review.delivered) {
        flow += section("PRICE DELIVERED" + of + ", for each " +
                        (style.system == core::UnitSystem::us ? "yd3" : "m3")) +
                price_flow(*review.delivered, style.system);
    }
    return flow + section("CHECKS" + of) + text_of_checks(review.checks, style.system);
}

core::VerdictSummary summary_of(const ReviewResult& result) {
    core::VerdictSummary summary;
    for (const SubmittalReview& review : result.reviews) {
        summary.add(review.checks);
    }
    return summary;
}

Flow reviews_flow(const ReviewResult& result, const TextStyle& style) {
    std::string what = "Submittals held against " + text::printable(result.against);
    what += result.date ? "; of " + core::date_text(*result.date) : "";
    Flow page = paragraph(text::printable(result.title), {}) + file_line(result.inputs) +
                paragraph(what, {}) + "\n" +
                verdict_line(summary_of(result), style.system, "NOT ACCEPTED");
    for (const SubmittalReview& review : result.reviews) {
        page += paragraph(text::printable(review.label) + ": " +
                              std::string{name_of(review.verdict)} + "; " + counts(review) + ".",
                          {});
    }
    if (result.reviews.size() > 1) {
        page += section("SIDE BY SIDE") + side_by_side(result, style.system);
    }
    for (const SubmittalReview& review : result.reviews) {
        page += review_flow(result, review, style);
    }
    return page;
}

Json json_of_price(const core::DeliveredPrice& price) {
    Json surcharges = Json::array();
    for (const core::Surcharge& surcharge : price.surcharges) {
        surcharges.push_back({{"name", surcharge.name}, {"per_m3", surcharge.per_m3}});
    }
    return {{"currency", price.currency},
            {"concrete_per_m3", number_or_null(price.concrete)},
            {"haul_per_m3", number_or_null(price.haul)},
            {"surcharges", std::move(surcharges)},
            {"short_loads_per_m3", number_or_null(price.short_loads)},
            {"delivered_per_m3", number_or_null(price.whole)},
            {"missing", price.missing}};
}

Json json_of_review(const SubmittalReview& review) {
    return {{"label", review.label},
            {"file", review.file},
            {"title", review.title},
            {"answer", std::string{name_of(review.verdict)}},
            {"to_correct", json_of_items(review.faults)},
            {"to_settle", json_of_items(review.remarks)},
            {"letter", json_of_items(review.letter)},
            {"w_cm", review.proportions.totals.w_cm},
            {"binder_kg_m3", review.proportions.totals.binder_kg_m3},
            {"air_percent", review.proportions.selection.air_percent},
            {"delivered", review.delivered ? json_of_price(*review.delivered) : Json(nullptr)},
            {"checks", json_of(review.checks)}};
}

} // namespace

std::string text(const ReviewResult& result, const TextStyle& style) {
    return written(reviews_flow(result, style) + "\n" + trace_line(result.inputs), style);
}

std::string html(const ReviewResult& result, const TextStyle& style) {
    return html_of(reviews_flow(result, style),
                   {.title = result.title, .command = "check", .inputs = result.inputs});
}

std::string json(const ReviewResult& result) {
    Json object = json_heading("check", result.title, summary_of(result), result.inputs);
    object["against"] = result.against;
    object["date"] = result.date ? Json(core::date_text(*result.date)) : Json(nullptr);
    object["submittals"] = Json::array();
    for (const SubmittalReview& review : result.reviews) {
        object["submittals"].push_back(json_of_review(review));
    }
    object["checks"] = Json::array();
    for (const SubmittalReview& review : result.reviews) {
        for (const Json& check : json_of(review.checks)) {
            object["checks"].push_back(check);
        }
    }
    object["cautions"] = Json::array();
    return written(object);
}

std::string csv(const ReviewResult& result, core::UnitSystem system) {
    std::string text = csv_row({"submittal", "answer", "verdict", "id", "check", "message"});
    for (const SubmittalReview& review : result.reviews) {
        for (const core::Check& check : review.checks) {
            const CheckRow row = row_of(check, system);
            text += csv_row({csv_cell(review.label), csv_cell(std::string{name_of(review.verdict)}),
                             printed_verdict(row.verdict), csv_cell(row.id), csv_cell(row.title),
                             csv_cell(row.told())});
        }
        if (review.delivered && review.delivered->whole) {
            text += csv_row(
                {csv_cell(review.label), csv_cell(std::string{name_of(review.verdict)}), "", "",
                 "delivered",
                 csv_cell(money(review.delivered->currency, *review.delivered->whole, system))});
        }
    }
    return text;
}

} // namespace boardmark::report
