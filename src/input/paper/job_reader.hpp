#pragma once

#include <boardmark/core/mix/material.hpp>
#include <boardmark/core/paper/job_papers.hpp>

#include "../reading/file_context.hpp"

#include <map>
#include <memory>
#include <string>

namespace boardmark::input {

/// What a mix file says of papers, schedule, decisions and delivery; none where it has no word.
std::shared_ptr<const core::JobPapers>
read_papers(const FileContext& context, const std::map<std::string, core::Material>& materials);

/// The same of a wall file, which has no papers of its own.
std::shared_ptr<const core::JobPapers> read_job(const FileContext& context);

} // namespace boardmark::input
