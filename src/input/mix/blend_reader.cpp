#include "blend_reader.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/mix/blended_aggregate.hpp>

#include "plain_phrase.hpp"

#include <algorithm>

namespace boardmark::input {
namespace {

using core::Role;

Path in_blend(std::string_view key) {
    return {"mixture", "aggregate", key};
}

/// Keys that a blend settles.
void refuse_other_shares(const MixContext& context) {
    for (const Path& path :
         {Path{"mixture", "coarse"}, Path{"mixture", "fine"},
          Path{"mixture", "coarse_dry_rodded_density"}, Path{"selections", "coarse_volume"},
          Path{"selections", "coarse_adjustment"}, Path{"selections", "fine_share"},
          Path{"selections", "fine_share_by_mass"}}) {
        if (const Reading* other = context.document.find(path)) {
            context.refuse(*other->key,
                           dotted(path) + " and 'mixture.aggregate' cannot both be given: the "
                                          "blend settles the shares of all aggregate",
                           "keep one of the two");
        }
    }
}

/// The one target that is stated: "to", "curve" or "band". Nothing where none or several are.
const Reading* target_of(const MixContext& context) {
    const Reading* target = nullptr;
    for (const char* key : {"to", "curve", "band"}) {
        const Reading* stated = context.document.find(in_blend(key));
        if (stated && target) {
            context.refuse(*stated->key, "mixture.aggregate has two targets",
                           "keep one of 'to', 'curve' and 'band'");
            return nullptr;
        }
        target = stated ? stated : target;
    }
    if (!target && !context.has(in_blend("to")) && !context.has(in_blend("curve")) &&
        !context.has(in_blend("band"))) {
        context.missing({"mixture", "aggregate"}, "to",
                        "the aggregates are blended to a target, or to a 'curve' or a 'band'",
                        "add for example 'to: maximum density'");
    }
    return target;
}

core::BlendTo kind_of_target(const MixContext& context) {
    return context.document.find(in_blend("curve"))  ? core::BlendTo::curve
           : context.document.find(in_blend("band")) ? core::BlendTo::band
                                                     : core::BlendTo::maximum_density;
}

/// The sieves of a curve or a band, coarsest first. Percent passing never rises from coarse to
/// fine.
std::vector<core::SieveBand> read_target_sieves(const MixContext& context, const Reading& target) {
    const bool band = kind_of_target(context) == core::BlendTo::band;
    auto pairs = target.pairs;
    std::ranges::stable_sort(pairs, std::greater{},
                             [](const Pair& pair) { return pair.key.number; });
    std::vector<core::SieveBand> sieves;
    for (const Pair& pair : pairs) {
        const double high = band ? pair.value.high : pair.value.number;
        if (!sieves.empty() &&
            (pair.value.number > sieves.back().low_percent || high > sieves.back().high_percent)) {
            context.refuse(*pair.value.node,
                           dotted(in_blend(band ? "band" : "curve")) + ": more is to pass " +
                               pair.key.text + " than the next coarser sieve",
                           "percent passing falls from coarse to fine");
        }
        sieves.push_back({pair.key.number, pair.value.number, high});
    }
    return sieves;
}

void demand_sieves(const MixContext& context, const core::Material& material) {
    context.demand({"materials", material.name, "sieves"},
                   "aggregates are blended by them; the aggregate test report has them");
}

} // namespace

bool has_blend(const MixContext& context) {
    return context.has({"mixture", "aggregate"});
}

void read_blended_aggregates(const MixContext& context, const Materials& materials,
                             core::Mix& mix) {
    refuse_other_shares(context);
    target_of(context);
    const Reading* of = context.document.find(in_blend("of"));
    if (!of) {
        context.demand(in_blend("of"), "");
        return;
    }
    std::vector<std::string> names;
    for (const Parsed& name : of->items) {
        const core::Material* material = find_material(context, materials, name);
        if (!material) {
            continue;
        }
        const Role role = role_of(material->kind);
        if (role != Role::coarse && role != Role::fine) {
            context.refuse(*name.node,
                           "mixture.aggregate.of: " + name.text + " is " +
                               std::string{core::name_of(material->kind)},
                           "name aggregates only");
        } else if (std::ranges::count(names, name.text) > 0) {
            context.refuse(*name.node,
                           "mixture.aggregate.of: " + name.text + " is named a second time",
                           "name each aggregate once");
        } else {
            names.push_back(name.text);
            demand_sieves(context, *material);
            (role == Role::coarse ? mix.coarse : mix.fine).push_back({*material, 0});
        }
    }
    if (of->sound && (mix.coarse.empty() || mix.fine.empty())) {
        context.refuse(*of->key,
                       "mixture.aggregate.of names no " +
                           std::string{mix.coarse.empty() ? "coarse" : "fine"} + " aggregate",
                       "a blend holds both");
    }
    mix.selections.fine_share_percent = 1; // until they are blended: no bulk volume is selected
}

void blend(const MixContext& context, core::Mix& mix) {
    const Reading* target = target_of(context);
    const Reading* of = context.document.find(in_blend("of"));
    if (!target || !of) {
        return;
    }
    core::BlendWish wish{.to = kind_of_target(context), .of = {}};
    if (wish.to != core::BlendTo::maximum_density) {
        wish.sieves = read_target_sieves(context, *target);
    }
    for (const Parsed& name : of->items) {
        for (const auto* shares : {&mix.coarse, &mix.fine}) {
            for (const core::Share& share : *shares) {
                if (share.material->name == name.text) {
                    wish.of.push_back(share.material);
                }
            }
        }
    }
    auto blended = core::blend_of(wish, context.options.vocabulary.tables(mix.system));
    if (!blended) {
        const core::Unresolved& why = blended.why();
        context.refuse(*target->key, "mixture.aggregate: " + plain(why.what),
                       plain(why.ways_out.front()));
        return;
    }
    mix.blend = std::make_shared<const core::AggregateBlend>(*std::move(blended));
    core::take_blend(mix);
}

} // namespace boardmark::input
