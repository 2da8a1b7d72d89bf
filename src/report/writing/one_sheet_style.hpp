#pragma once

namespace boardmark::report {

// What a ticket or card has besides the style of every page: blanks, boxes, and on paper two columns
// in small print that fit 190 by 263 mm, Letter and A4 less their margins. The page's policy names
// the hash; a test computes it again.
constexpr const char* one_sheet_style_hash = "sha256-TM8vkIQxIbL62yagiP43kRlPvojcpF2HSN1ubclcOUQ=";

constexpr const char* one_sheet_style = R"(
td.blank{border-bottom:1px solid var(--ink);min-width:3.5rem}
td.blank+td{padding-left:.6rem}
@media (min-width:40.01rem){header th,header td:not(.blank){white-space:nowrap;width:1%}}
td.box::before{content:"";display:inline-block;width:.8rem;height:.8rem;border:1px solid var(--ink)}
@page{margin:8mm 13mm;@top-left{content:none}@bottom-right{content:none}}
@media print{body{font:7pt/1.14 "Liberation Sans",Arial,Helvetica,sans-serif}
:not(h2){break-before:auto!important;break-after:auto!important}
.screen,.fold,.folded{display:none}.checks,.checks tbody,.checks tr{display:block}
.checks{font-size:6.2pt;line-height:1.08;margin:0}.checks tr>*,.checks tr+tr>*{display:inline;padding:0 .3em 0 0;border:0}
.checks .id{display:none}
main{columns:2;column-gap:5mm}header,.wide,footer{column-span:all}
h1{font-size:11pt;margin:0 0 .5mm}h2{font-size:7.2pt;margin:.7mm 0 .2mm;padding:0;letter-spacing:0}
p{margin:.3mm 0}ul,ol{margin:.2mm 0;padding-left:3.2mm}li{margin:.15mm 0}
.verdict{margin:.8mm 0;padding-left:2mm}.table{margin:.3mm 0}table{width:100%;min-width:0}
th,td{padding:.3mm 1.6mm .3mm 0}td.blank{min-width:9mm;height:3.5mm;border:1px solid var(--line)}
td.blank+td{padding-left:1.6mm}.wide td{white-space:nowrap}.wide td:last-child{white-space:normal}td.box{width:4mm}td.box::before{width:3mm;height:3mm}
footer{margin-top:.6mm;padding-top:.3mm;font-size:6pt}footer p{margin:0}}
)";

} // namespace boardmark::report
