# Completion of ohmfold for fish. A test compares its options with those of the program.
complete -c ohmfold -n __fish_use_subcommand -f
complete -c ohmfold -n __fish_use_subcommand -a solve -d 'Solve the problems in circuit files'
complete -c ohmfold -n __fish_use_subcommand -a inspect -d 'Tell whether series and parallel suffice'
complete -c ohmfold -n __fish_use_subcommand -a combine -d 'Work out a network written as one expression'
complete -c ohmfold -n __fish_use_subcommand -l version -d 'Print the version'
complete -c ohmfold -s h -l help -d 'Print a short help'

complete -c ohmfold -n '__fish_seen_subcommand_from solve' -l case -x -d 'Solve only the case of this label'
complete -c ohmfold -n '__fish_seen_subcommand_from inspect' -l case -x -d 'Inspect only the case of this label'
complete -c ohmfold -n '__fish_seen_subcommand_from solve' -l method -x -a 'series-parallel equal-potentials delta-star node-voltage superposition' -d 'The way to take where series and parallel stop'
complete -c ohmfold -n '__fish_seen_subcommand_from combine' -f -l across -x -d 'Feed it with this voltage'

set -l solves '__fish_seen_subcommand_from solve combine'
set -l writes '__fish_seen_subcommand_from solve inspect combine'
complete -c ohmfold -n $solves -l pairs -d 'Combine two parts in each step, never more'
complete -c ohmfold -n $writes -l figures -x -d 'Significant figures of rounded values'
complete -c ohmfold -n $writes -l as -x -a 'text json' -d 'What to write'
complete -c ohmfold -n $writes -s o -l output -r -d 'Write to this file'
complete -c ohmfold -n $writes -l width -x -d 'Columns of text'
complete -c ohmfold -n $writes -l ascii -d 'Write ohm and u, not the signs of ohm and micro'
