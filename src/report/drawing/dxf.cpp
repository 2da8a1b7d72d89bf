#include "dxf.hpp"

#include "../writing/finite.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>

namespace boardmark::report {
namespace {

enum class Dash { none, dashed, dash_dot };

struct Layer {
    Ink ink;
    std::string_view name;
    int colour; ///< of the index that drawing programs share: 1 red, 5 blue, 7 black or white
    Dash dash = Dash::none;
};

constexpr Layer layers[] = {
    {Ink::frame, "outlines", 7},
    {Ink::concrete, "concrete", 8},
    {Ink::footing, "footings", 8},
    {Ink::board, "boards", 30},
    {Ink::piece_number, "piece_numbers", 30},
    {Ink::sliver, "slivers", 1},
    {Ink::chamfer, "chamfers", 8},
    {Ink::mitre, "mitres", 7},
    {Ink::opening, "openings", 7},
    {Ink::contraction_joint, "joints", 7, Dash::dash_dot},
    {Ink::lift, "lifts", 5, Dash::dashed},
    {Ink::tie, "ties", 7},
    {Ink::hardest_tie, "hardest_loaded_ties", 1},
    {Ink::bar, "bars_cut_across", 4},
    {Ink::standing_bar, "bars_that_stand", 4},
    {Ink::pressure, "pressure", 5},
    {Ink::form_rating, "form_rating", 1, Dash::dashed},
    {Ink::match_line, "match_lines", 8, Dash::dashed},
    {Ink::dimension, "dimensions", 8},
    {Ink::lettering, "lettering", 7},
    {Ink::warning, "warnings", 1},
};

std::string_view layer_of(Ink ink) {
    return std::ranges::find(layers, ink, &Layer::ink)->name;
}

std::string_view line_type_of(Dash dash) {
    switch (dash) {
    case Dash::none:
        return "CONTINUOUS";
    case Dash::dashed:
        return "DASHED";
    case Dash::dash_dot:
        break;
    }
    return "DASHDOT";
}

/// Letters beyond ASCII as `\U+00E9`, which every reader of the release knows. The text is UTF-8.
std::string in_ascii(std::string_view text) {
    std::string written;
    for (std::size_t i = 0; i < text.size();) {
        const auto first = static_cast<unsigned char>(text[i]);
        const std::size_t length = first < 0x80 ? 1 : first < 0xe0 ? 2 : first < 0xf0 ? 3 : 4;
        if (length == 1) {
            written += text[i++];
            continue;
        }
        std::uint32_t letter = first & (0xffU >> (length + 1));
        for (std::size_t next = 1; next < length; ++next) {
            letter = letter << 6 | (static_cast<unsigned char>(text[i + next]) & 0x3fU);
        }
        written += fmt::format("\\U+{:04X}", letter);
        i += length;
    }
    return written;
}

class DxfFile {
public:
    explicit DxfFile(ModelUnit unit)
        : m_per_mm{unit == ModelUnit::mm ? 1 : 1 / 25.4} {
        m_text = "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1009\n0\nENDSEC\n";
        write_tables();
        m_text += "0\nSECTION\n2\nENTITIES\n";
    }

    /// Lines of words, from the drawing's upper left corner down.
    void add_heading(const std::vector<std::string>& lines, double scale) {
        const double letters = letter_mm * scale * m_per_mm;
        for (const std::string& line : lines) {
            m_top -= 1.6 * letters;
            write_words(Ink::lettering, line, letters, {0, m_top}, {});
        }
        m_top -= 3 * letters;
    }

    void add(const View& view) {
        const double size = view.scale * m_per_mm;
        for (const Mark& mark : view.marks) {
            write_mark(mark, view, size);
        }
        constexpr double gap_mm = 12;
        m_top -= (view.height_mm + gap_mm) * size;
    }

    std::string take() && { return std::move(m_text) + "0\nENDSEC\n0\nEOF\n"; }

private:
    struct Place {
        double x;
        double y;
    };
    struct Setting {
        Anchor anchor = Anchor::start;
        bool upright = false;
    };

    void put(int code, std::string_view value) { m_text += fmt::format("{}\n{}\n", code, value); }
    void put(int code, double value) { put(code, fmt::format("{:.6f}", finite(value))); }
    void put_at(int code, const Place& place) {
        put(code, place.x);
        put(code + 10, place.y);
        put(code + 20, 0.0);
    }
    void begin(std::string_view entity, Ink ink) {
        put(0, entity);
        put(8, layer_of(ink));
    }

    void write_linetype(Dash dash, std::string_view shown, const std::vector<double>& parts) {
        put(0, "LTYPE");
        put(2, line_type_of(dash));
        put(70, "0");
        put(3, shown);
        put(72, "65");
        put(73, std::to_string(parts.size()));
        double length = 0;
        for (const double part : parts) {
            length += part < 0 ? -part : part;
        }
        put(40, length);
        for (const double part : parts) {
            put(49, part);
        }
    }

    void write_tables() {
        const double dash = 60 * m_per_mm;
        m_text += "0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLTYPE\n70\n3\n";
        write_linetype(Dash::none, "solid", {});
        write_linetype(Dash::dashed, "dashed", {dash, -dash / 2});
        write_linetype(Dash::dash_dot, "dash, dot", {dash, -dash / 4, dash / 8, -dash / 4});
        m_text += fmt::format("0\nENDTAB\n0\nTABLE\n2\nLAYER\n70\n{}\n", std::size(layers));
        for (const Layer& layer : layers) {
            put(0, "LAYER");
            put(2, layer.name);
            put(70, "0");
            put(62, std::to_string(layer.colour));
            put(6, line_type_of(layer.dash));
        }
        m_text += "0\nENDTAB\n0\nENDSEC\n";
    }

    /// The geometry's own zero of x stands at 0, one view under the other.
    Place placed(const PaperPoint& point, const View& view, double size) const {
        return {(point.x_mm - view.origin.x_mm) * size, m_top - point.y_mm * size};
    }

    void write_mark(const Mark& mark, const View& view, double size) {
        std::vector<Place> places;
        for (const PaperPoint& point : mark.points) {
            places.push_back(placed(point, view, size));
        }
        switch (mark.shape) {
        case Mark::Shape::words:
            write_words(mark.ink, mark.words, mark.size_mm * size, places.front(),
                        {mark.anchor, mark.upright});
            return;
        case Mark::Shape::circle:
            begin("CIRCLE", mark.ink);
            put_at(10, places.front());
            put(40, mark.size_mm * size);
            return;
        case Mark::Shape::line:
        case Mark::Shape::area:
            write_line(mark, places);
        }
    }

    void write_line(const Mark& mark, const std::vector<Place>& places) {
        if (mark.shape == Mark::Shape::line && places.size() == 2) {
            begin("LINE", mark.ink);
            put_at(10, places[0]);
            put_at(11, places[1]);
            return;
        }
        begin("POLYLINE", mark.ink);
        put(66, "1");
        put_at(10, {0, 0});
        put(70, mark.shape == Mark::Shape::area ? "1" : "0");
        for (const Place& place : places) {
            begin("VERTEX", mark.ink);
            put_at(10, place);
        }
        begin("SEQEND", mark.ink);
    }

    void write_words(Ink ink, std::string_view words, double letters, const Place& place,
                     const Setting& setting) {
        constexpr std::string_view across[] = {"0", "1", "2"};
        begin("TEXT", ink);
        put_at(10, place);
        put(40, letters);
        put(1, in_ascii(words));
        put(50, setting.upright ? 90.0 : 0.0);
        if (setting.anchor != Anchor::start) {
            put(72, across[static_cast<std::size_t>(setting.anchor)]);
            put_at(11, place);
        }
    }

    double m_per_mm;
    double m_top = 0;
    std::string m_text;
};

} // namespace

std::string dxf_of(const std::vector<View>& views, const std::vector<std::string>& heading,
                   ModelUnit unit) {
    DxfFile file{unit};
    double largest = 1;
    for (const View& view : views) {
        largest = std::max(largest, view.scale);
    }
    file.add_heading(heading, largest);
    for (const View& view : views) {
        file.add(view);
    }
    return std::move(file).take();
}

} // namespace boardmark::report
