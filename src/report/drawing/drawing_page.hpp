#pragma once

/// The page that holds drawing sheets. Its policy lets nothing in but its own style, whose hash it
/// names; a test computes it again.
namespace boardmark::report {

constexpr const char* drawing_style_hash = "sha256-RcGnVHDVeikMIuwZbPYgJlVbK0IwRloRFQlq/zgsBBQ=";

constexpr const char* drawing_style = R"(
body{margin:0;background:#ddd}
h1{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
svg{display:block;margin:6mm auto;max-width:100%;height:auto}
@page{margin:10mm}
@media print{body{background:none}svg{margin:0;max-width:none;break-after:page}
svg:last-of-type{break-after:auto}}
)";

constexpr const char* drawing_page = R"(<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src '{hash}'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>{title}: draw</title>
<style>{style}</style>
</head>
<body>
<main>
<h1>{title}</h1>
{sheets}</main>
</body>
</html>
)";

} // namespace boardmark::report
