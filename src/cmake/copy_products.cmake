# Copies those products that are committed: the ones whose path lies in a folder of the source tree.
foreach(folder include docs/functions)
  file(GLOB_RECURSE products RELATIVE ${FROM} ${FROM}/${folder}/*)
  foreach(product ${products})
    configure_file(${FROM}/${product} ${TO}/${product} COPYONLY)
  endforeach()
endforeach()
