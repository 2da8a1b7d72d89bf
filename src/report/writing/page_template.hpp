#pragma once

/// The page of a result for a browser. What a file says is written by the escaping form {{name}}
/// alone, so that nothing of it becomes markup; {{{name}}} puts in what was written by such a form.
namespace boardmark::report {

// The policy names the hash of the style, so that no other style can be smuggled in; a test
// computes it again.
constexpr const char* style_hash = "sha256-CWjsCsHpwKJShYOpsBvPAiG1kQRXUTUlBLjRTXb6Hy0=";

constexpr const char* page_style = R"(
:root{--paper:#fcfbf8;--ink:#1c1f22;--soft:#565c62;--line:#cfcbc2;--accent:#28495c;
--holds:#0a5c44;--fails:#9c1b2e;--watch:#7a4d00;--open:#4d5359;--area:#dde5ea}
@media (prefers-color-scheme:dark){:root{--paper:#16191b;--ink:#ece9e2;--soft:#a9afb4;--line:#3c4246;
--accent:#9cc3d8;--holds:#7fd1ae;--fails:#ff9aa5;--watch:#f0c274;--open:#b4bbc0;--area:#24333c}}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);
font:1rem/1.5 Charter,"Bitstream Charter","Iowan Old Style",Georgia,serif;
font-variant-numeric:lining-nums tabular-nums}
main{max-width:62rem;margin:0 auto;padding:2rem 1.25rem 3rem}
h1{font-size:1.6rem;line-height:1.25;margin:0 0 .4rem;overflow-wrap:anywhere}
h2{font-size:1.05rem;font-weight:600;letter-spacing:.04em;color:var(--accent);
margin:2rem 0 .5rem;padding-bottom:.2rem;border-bottom:1px solid var(--line)}
p{margin:.4rem 0;overflow-wrap:anywhere}
ul{margin:.4rem 0;padding-left:1.2rem}
li{margin:.25rem 0;overflow-wrap:anywhere}
.table{overflow-x:auto;margin:.5rem 0}
table{border-collapse:collapse;min-width:min(100%,24rem)}
th,td{padding:.28rem .9rem .28rem 0;text-align:left;vertical-align:top;font-weight:400;
overflow-wrap:break-word}
th{white-space:normal}
thead th,thead td{color:var(--soft);border-bottom:1px solid var(--line);vertical-align:bottom}
tbody tr+tr>*{border-top:1px solid var(--line)}
.r{text-align:right;white-space:nowrap}
tbody .n{color:var(--soft)}
td.blank{min-width:2.6rem;height:1.9rem;border-bottom:1px solid var(--soft)}
.v{white-space:nowrap;font-weight:600}
.holds{color:var(--holds)}.fails{color:var(--fails)}.watch{color:var(--watch)}.open{color:var(--open)}
.verdict{font-weight:600;border-left:.3rem solid;padding-left:.8rem;margin:1rem 0}
.verdict a{color:inherit}
.checks{width:100%;margin:.5rem 0}
.checks th,.checks td{overflow-wrap:anywhere}
.checks th{width:16rem}
.checks tr:target>*{background:var(--area)}
.id{display:block;color:var(--soft);font-size:.85rem}
summary{cursor:pointer;margin:.4rem 0}
summary h2{display:inline-block;margin:1.6rem 0 0}
@media screen{.fold:not([open])+.folded:not(:has(:target)){display:none}}
pre{white-space:pre-wrap;overflow-wrap:anywhere;font:0.85rem/1.35 ui-monospace,"DejaVu Sans Mono",monospace}
figure{margin:1rem 0}
.drawing svg{display:block;max-width:100%;height:auto;background:#fff}
figcaption{color:var(--soft);font-size:.95rem}
.plot>svg{display:block;width:100%;height:auto;max-width:46rem}
.plot>svg text{font:13px Charter,Georgia,serif;fill:var(--ink)}
.key{list-style:none;padding:0;margin:.2rem 0}
.key svg{width:2.5rem;height:.8rem;vertical-align:baseline;margin-right:.6rem}
svg .axis{stroke:var(--soft);fill:none;stroke-width:1}
svg .grid{stroke:var(--line);fill:none;stroke-width:1}
svg .value{stroke:var(--accent);fill:none;stroke-width:2.5}
svg .other{stroke:var(--watch);fill:none;stroke-width:2;stroke-dasharray:2 5;stroke-linecap:round}
svg .limit{stroke:var(--fails);fill:none;stroke-width:2;stroke-dasharray:8 5}
svg .bound{stroke:var(--fails);fill:none;stroke-width:2}
svg .band{fill:var(--area);stroke:var(--soft);stroke-width:1}
svg .band2{fill:var(--line);stroke:var(--soft);stroke-width:1}
svg .point{fill:var(--paper);stroke:var(--accent);stroke-width:2.5}
svg .chosen{fill:var(--fails);stroke:var(--paper);stroke-width:2}
footer{margin-top:2.5rem;color:var(--soft);font-size:.9rem;border-top:1px solid var(--line);
padding-top:.6rem}
footer p{margin:.2rem 0}
@media (max-width:40rem){main{padding:1.25rem .9rem 2rem}th,td{padding-right:.6rem}
.checks tr>*{display:block;width:auto;border:0;padding:.05rem 0}
.checks tr{display:block;border-top:1px solid var(--line);padding:.4rem 0}
td{overflow-wrap:anywhere}.plot>svg text{font-size:16px}
.drawing{overflow-x:auto}.drawing svg{max-width:none}
.stack,.stack tbody{display:block}.stack thead{display:none}
.stack tr{display:block;padding:.4rem 0}
.stack tr>*,.stack tr+tr>*{display:flex;justify-content:space-between;gap:1rem;border:0;padding:.05rem 0;
text-align:right;white-space:normal}
.stack tr>th,.stack td[data-label=""]{display:block;text-align:left}.stack tbody th{font-weight:600}
.stack td:empty:not(.blank,.box){display:none}.stack td.blank{min-height:1.5rem}
.stack td::before{content:attr(data-label);color:var(--soft);text-align:left;flex:0 1 auto}
.stack tr+tr{border-top:1px solid var(--line)}}
html{--running:attr(data-running)}
@page{margin:17mm 14mm 15mm;
@top-left{content:var(--running);font:8pt Charter,Georgia,serif;color:#444;white-space:nowrap;overflow:hidden}
@bottom-right{content:counter(page) " of " counter(pages);font:8pt Charter,Georgia,serif;color:#444}}
@page:first{@top-left{content:none}}
@media print{:root{--paper:#fff;--ink:#000;--soft:#444;--line:#bbb;--accent:#123;--holds:#064;
--fails:#800;--watch:#640;--open:#444;--area:#e4e8ea}
body{font-size:9.5pt;line-height:1.38}main{max-width:none;padding:0}h2,summary,.fold{break-after:avoid}
h2{margin:1.1rem 0 .3rem}summary h2{margin:.8rem 0 0}li{margin:.1rem 0}p{margin:.25rem 0;orphans:2;widows:2}
th,td{padding-top:.12rem;padding-bottom:.12rem}
.checks{font-size:8.5pt;line-height:1.3}.checks th{width:40mm}.id{font-size:7.5pt}
.folded{font-size:8pt;line-height:1.3}.folded:not(:has(table)),ul:has(>li:nth-child(13)){columns:2;column-gap:6mm}
.key{font-size:8pt;margin:0}.key li{margin:0}
.folded .checks,.folded .checks tbody{display:block;font-size:7.5pt}
.folded .checks tbody{columns:2;column-gap:6mm}
.folded .checks tr{display:block;padding:.1rem 0}
.folded .checks tr>*{display:inline;border:0;padding:0 .3em 0 0}
.folded .checks tr+tr{border-top:1px solid var(--line)}.folded .id{display:inline}
summary{list-style:none}summary::-webkit-details-marker{display:none}
tr,li,figure,.verdict,footer{break-inside:avoid}.table{overflow:visible}thead{display:table-header-group}
thead,tbody tr:first-child,li:first-child{break-after:avoid}
tbody tr:last-child,li:last-child,footer{break-before:avoid}
.plot{display:inline-block;width:48%;margin:.4rem 1% .4rem 0;vertical-align:top}
.drawing{display:inline-block;width:min-content;margin:.3rem 4mm .3rem 0;vertical-align:bottom}
.drawing svg{max-width:none}figcaption{font-size:8pt;line-height:1.25}footer{margin-top:1rem;font-size:8pt}}
)";

constexpr const char* page_template = R"(<!DOCTYPE html>
<html lang="en" data-running="{{title}}: {{command}}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src '{{hash}}'{{#one_sheet}} '{{sheet_hash}}'{{/one_sheet}}; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>{{title}}: {{command}}</title>
<style>{{{style}}}</style>
{{#one_sheet}}<style>{{{sheet_style}}}</style>
{{/one_sheet}}</head>
<body>
<main>
<header>
<h1>{{title}}</h1>
{{{opening}}}</header>
{{#sections}}
<section{{#wide}} class="wide"{{/wide}}{{#screen}} class="screen"{{/screen}}>
{{#folded}}<details class="fold"><summary><h2>{{name}}</h2></summary></details>
<div class="folded">
{{/folded}}{{^folded}}<h2>{{name}}</h2>
{{/folded}}{{{blocks}}}{{#folded}}</div>
{{/folded}}</section>
{{/sections}}
<footer>
<p>Written by {{program}}, {{command}}. Proportions and forces are a start, to be proven on the job; local codes and the licensed engineer decide.</p>
{{#inputs}}<p>{{file}}, SHA-256 {{sha256}}</p>
{{/inputs}}</footer>
</main>
</body>
</html>
)";

/// What a block of a section is written by.
struct BlockTemplate {
    const char* kind;
    const char* form;
};
constexpr BlockTemplate block_templates[] = {
    {"headline", R"(<p class="verdict {{role}}">{{counts}}{{#named}}<br>
{{heading}}: {{#names}}{{#link}}<a href="#{{anchor}}">{{title}}</a>{{/link}}{{^link}}{{title}}{{/link}}{{#is_last}}.{{/is_last}}{{^is_last}}, {{/is_last}}{{/names}}{{/named}}</p>
)"},
    {"checks", R"({{#fold}}<details class="fold"><summary>{{count}}</summary></details>
<div class="folded">
{{/fold}}<table class="checks"><tbody>
{{{rows}}}</tbody></table>
{{#fold}}</div>
{{/fold}})"},
    {"paragraph", R"(<p>{{text}}</p>
)"},
    {"verdict", R"(<p class="verdict {{role}}">{{text}}</p>
)"},
    {"items", R"(<ul>
{{#item}}<li>{{text}}</li>
{{/item}}</ul>
)"},
    {"steps", R"(<ol>
{{#step}}<li>{{text}}</li>
{{/step}}</ol>
)"},
    {"verbatim", R"(<pre>{{text}}</pre>
)"},
    {"table", R"(<div class="table"><table aria-label="{{name}}"{{#stack}} class="stack"{{/stack}}>
{{#head}}<thead>{{{rows}}}</thead>
{{/head}}<tbody>
{{{body}}}</tbody>
</table></div>
)"},
    {"figure", R"(<figure class="plot">
<svg viewBox="0 0 {{width}} {{height}}" role="img" aria-label="{{caption}}">
{{#areas}}<polygon class="{{role}}" points="{{points}}"/>
{{/areas}}{{#lines}}<polyline class="{{role}}" points="{{points}}"/>
{{/lines}}{{{spots}}}{{#labels}}<text x="{{x}}" y="{{y}}" text-anchor="{{anchor}}">{{text}}</text>
{{/labels}}</svg>
{{#has_key}}<ul class="key">
{{#key}}<li><svg viewBox="0 0 40 12" aria-hidden="true">{{#spot}}<circle class="{{role}}" cx="20" cy="6" r="5"/>{{/spot}}{{^spot}}<polyline class="{{role}}" points="1,6 39,6"/>{{/spot}}</svg>{{text}}</li>
{{/key}}</ul>
{{/has_key}}<figcaption>{{caption}}</figcaption>
</figure>
)"},
    {"drawing", R"(<figure class="drawing">
{{{svg}}}<figcaption>{{caption}}</figcaption>
</figure>
)"},
};

/// Of spots of a figure and rows of a table there may be a hundred thousand: each is written by
/// itself.
constexpr const char* spot_template =
    R"(<circle class="{{role}}" cx="{{x}}" cy="{{y}}" r="6"><title>{{meaning}}</title></circle>
)";
constexpr const char* cell_template =
    R"({{#is_name}}<th scope="row" class="{{class}}">{{text}}</th>{{/is_name}}{{^is_name}}<td class="{{class}}" data-label="{{label}}">{{text}}</td>{{/is_name}})";
constexpr const char* head_cell_template =
    R"({{#is_name}}<th scope="col" class="{{class}}">{{text}}</th>{{/is_name}}{{^is_name}}<td></td>{{/is_name}})";
constexpr const char* check_template =
    R"(<tr id="{{anchor}}"><td class="v {{role}}">{{verdict}}</td><th scope="row">{{title}} <span class="id">{{id}}</span></th><td>{{told}}</td></tr>
)";

} // namespace boardmark::report
