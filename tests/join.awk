# Joins test files into one unit: what they include first, then each in a namespace of its own, for their
# private names are the same in many. Messages still name the file and line that was written.
#
#   awk -f join.awk FILE...
{
    if (FNR == 1) {
        files[++count] = FILENAME
    }
    if ($0 ~ /^#include/) {
        if (!($0 in included)) {
            included[$0] = 1
            print
        }
        $0 = ""
    }
    text[count] = text[count] $0 "\n"
}
END {
    for (i = 1; i <= count; ++i) {
        printf "namespace unit_%d {\n#line 1 \"%s\"\n%s}\n", i, files[i], text[i]
    }
}
