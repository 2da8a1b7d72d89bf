#pragma once

#include <boardmark/core/wall/wall.hpp>

#include <vector>

namespace boardmark::core {

/// A length of a run with a straight top.
struct Stretch {
    double from_m;
    double to_m;
    double from_height_m;
    double to_height_m;

    double height_at(double station_m) const {
        return from_height_m +
               (to_height_m - from_height_m) * (station_m - from_m) / (to_m - from_m);
    }
};

/// An upright rectangle in the plane of a run's face.
struct FaceBox {
    double from_m; ///< station
    double to_m;
    double low_m; ///< above the footing
    double high_m;

    double width_m() const { return to_m - from_m; }
    double height_m() const { return high_m - low_m; }
};

/// A run as geometry: its top as straight stretches, its thickness by height.
struct Profile {
    std::vector<Stretch> stretches; ///< in order, without gaps
    double greatest_height_m;
    double bottom_thickness_m;
    double top_thickness_m; ///< at the greatest height

    /// Of the run, above the footing.
    double thickness_at(double height_m) const;

    /// Of the cross section up to a height.
    double section_m2(double height_m) const;

    /// Of one upright face inside the box and below the top.
    double face_m2(const FaceBox& box) const;

    /// Of the run inside the box and below the top.
    double volume_m3(const FaceBox& box) const;

    /// The box around the whole run.
    FaceBox whole() const;

    /// The height at a station; at a step the greater one.
    double height_at(double station_m) const;

    /// The greatest height between the ends of a strip; 0 where they are nowhere.
    double highest_along_m(const FaceBox& strip) const;
};

Profile profile_of(const WallRun& run);

/// Where a box-out sits. Without a sill it is taken at half the height, without stations evenly
/// spread over the length.
std::vector<FaceBox> boxes_of(const Opening& opening, const Profile& profile);

} // namespace boardmark::core
