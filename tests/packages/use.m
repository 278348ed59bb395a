addpath ("/usr/share/cutwater/octave")
printf ("%.3f m\n", cutwater.npsh_available (1.013, 0.0234, 998.2, 2, 0.5))
