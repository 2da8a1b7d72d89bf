// Every check has a title that people read, and every title and remedy belongs to a check.

#include <boardmark/core/checks/check_remedy.hpp>
#include <boardmark/core/checks/check_title.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>

using namespace boardmark;

namespace {

std::string text_of(const std::filesystem::path& path) {
    std::ifstream file{path};
    return {std::istreambuf_iterator<char>{file}, {}};
}

void add_matches(const std::string& text, const std::regex& pattern, std::set<std::string>& ids) {
    for (std::sregex_iterator found{text.begin(), text.end(), pattern}, end; found != end;
         ++found) {
        ids.insert((*found)[1]);
    }
}

/// The ids that the sources name: those of the header and those written where a check is made.
std::set<std::string> ids_of_the_sources() {
    const std::filesystem::path root{BOARDMARK_SOURCE};
    std::set<std::string> ids;
    add_matches(text_of(root / "include/boardmark/core/checks/check_id.hpp"),
                std::regex{R"re(CheckId \w+\{"([^"]+)"\})re"}, ids);
    const std::regex written{R"re(\.(?:mean_)?id = "([^"]+)")re"};
    for (const auto& entry : std::filesystem::recursive_directory_iterator{root / "src/core"}) {
        if (entry.path().extension() == ".cpp") {
            add_matches(text_of(entry.path()), written, ids);
        }
    }
    ids.erase("batching."); // of a material: its name follows
    return ids;
}

} // namespace

TEST_CASE("every check id has one title, and every title an id") {
    const std::set<std::string> ids = ids_of_the_sources();
    REQUIRE(ids.size() > 90);
    std::set<std::string> titled;
    std::set<std::string> titles;
    for (const core::CheckTitle& row : core::check_titles()) {
        INFO(row.id);
        CHECK(titled.insert(std::string{row.id}).second);
        CHECK(titles.insert(std::string{row.title}).second);
    }
    CHECK(titled == ids);
}

TEST_CASE("a title reads as words of a list") {
    for (const core::CheckTitle& row : core::check_titles()) {
        INFO(row.title);
        CHECK(std::isupper(static_cast<unsigned char>(row.title.front())) != 0);
        CHECK(row.title.find_first_of(".,;:_()") == std::string_view::npos);
        CHECK(row.title.size() <= 40);
    }
}

TEST_CASE("a batched material stands in its title, an unknown id is its own") {
    CHECK(core::title_of("w_cm.exposure") == "Water/cement limit");
    CHECK(core::title_of("batching.white sand") == "Amount of white sand batched");
    CHECK(core::title_of("none.such") == "none.such");
}

TEST_CASE("a remedy is of one check, says what to do and leaves the dangerous to who may decide") {
    const std::set<std::string> ids = ids_of_the_sources();
    std::set<std::string> remedied;
    for (const core::CheckRemedy& row : core::check_remedies()) {
        INFO(row.id << ": " << row.remedy);
        CHECK(ids.contains(std::string{row.id}));
        CHECK(remedied.insert(std::string{row.id}).second);
        CHECK(!row.remedy.empty());
        CHECK(!row.remedy.ends_with('.'));
        const bool of_the_structure = row.id.starts_with("forms.") || row.id == "placing.rise" ||
                                      row.id.starts_with("stripping.") ||
                                      row.id.starts_with("steel.") || row.id == "cover.least";
        const bool defers = row.remedy.find("licensed engineer") != std::string_view::npos ||
                            row.remedy.find("a qualified person") != std::string_view::npos;
        CHECK((!of_the_structure || defers));
    }
    CHECK(core::remedy_of("batching.sand") == core::remedy_of("batching"));
    CHECK(core::remedy_of("finish.paste").empty());
}
