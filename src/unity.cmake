option(BOARDMARK_UNITY "Compile several files as one; OFF shows that each stands alone" ON)
set(BOARDMARK_UNITY_FILES 40 CACHE STRING "How many files of a room at most are compiled as one")

# So many files of a room are compiled as one: what a unit costs is mostly its headers. Tables of fields stay
# alone, their private names are the same in every file by design; so do two that call their measures what others
# call theirs, and those that take the whole of spdlog and of Random123.
function(boardmark_units target)
  set_target_properties(${target} PROPERTIES UNITY_BUILD ${BOARDMARK_UNITY} UNITY_BUILD_MODE GROUP)
  set(count 0)
  foreach(source ${ARGN})
    if(source MATCHES "(_fields|/volumes_figure|/side_by_side|/random_normals|/commands/log)[.]cpp$")
      continue()
    endif()
    math(EXPR unit "${count} / ${BOARDMARK_UNITY_FILES}")
    math(EXPR count "${count} + 1")
    set_source_files_properties(${source} PROPERTIES UNITY_GROUP "${unit}")
  endforeach()
endfunction()
