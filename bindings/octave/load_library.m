## Loads the compiled part, whose functions are then known to Octave as cutwater_NAME.
function loaded = load_library ()
  cutwater_octave;
  loaded = true;
endfunction
