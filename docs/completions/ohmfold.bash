# Completion of ohmfold for bash. A test compares its options with those of the program.
_ohmfold() {
  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command='' i
  local layout='--width --ascii -h --help'
  local formats='text json'
  local handout='--content --redraws --symbols --notation --answer-key --workbook --fragment --inline --figures-in-text'
  local drawing='--after --symbols --currents --potentials --no-values --no-marks'
  local shared="--figures --as -o --output $layout"
  COMPREPLY=()
  for ((i = 1; i < COMP_CWORD; i++)); do
    case ${COMP_WORDS[i]} in
      solve | draw | inspect | combine | check | hint | practise | mark) command=${COMP_WORDS[i]}; break ;;
    esac
  done
  case $before in
    --method) mapfile -t COMPREPLY < <(compgen -W 'series-parallel equal-potentials delta-star node-voltage superposition' -- "$word"); return ;;
    --as)
      case $command in
        solve) formats='text json html latex markdown' ;;
        draw) formats='svg tikz text' ;;
        mark) formats='text json csv' ;;
      esac
      mapfile -t COMPREPLY < <(compgen -W "$formats" -- "$word"); return ;;
    --content) mapfile -t COMPREPLY < <(compgen -W 'solution problem answers' -- "$word"); return ;;
    --redraws) mapfile -t COMPREPLY < <(compgen -W 'none stages steps' -- "$word"); return ;;
    --symbols) mapfile -t COMPREPLY < <(compgen -W 'rectangle zigzag' -- "$word"); return ;;
    --notation) mapfile -t COMPREPLY < <(compgen -W 'units letters' -- "$word"); return ;;
    --after) mapfile -t COMPREPLY < <(compgen -W 'last' -- "$word"); return ;;
    --level) mapfile -t COMPREPLY < <(compgen -W 'nudge point tell' -- "$word"); return ;;
    --figures | --width | --case | --across) return ;;
    -o | --output | --work) compopt -o default 2> /dev/null; return ;;
  esac
  case $command:$word in
    :*) mapfile -t COMPREPLY < <(compgen -W 'solve draw inspect combine check hint practise mark -h --help --version' -- "$word") ;;
    solve:-*) mapfile -t COMPREPLY < <(compgen -W "--case --method --pairs $handout $shared" -- "$word") ;;
    draw:-*) mapfile -t COMPREPLY < <(compgen -W "--case --method --pairs $drawing --figures --as --ascii -o --output -h --help" -- "$word") ;;
    inspect:-*) mapfile -t COMPREPLY < <(compgen -W "--case $shared" -- "$word") ;;
    combine:-*) mapfile -t COMPREPLY < <(compgen -W "--across --pairs $shared" -- "$word") ;;
    check:-*) mapfile -t COMPREPLY < <(compgen -W "--strict-rounding --as $layout -o --output" -- "$word") ;;
    hint:-*) mapfile -t COMPREPLY < <(compgen -W "--level $layout -o --output" -- "$word") ;;
    practise:-*) mapfile -t COMPREPLY < <(compgen -W "--work $layout" -- "$word") ;;
    mark:-*) mapfile -t COMPREPLY < <(compgen -W "--strict-rounding --as $layout -o --output" -- "$word") ;;
    solve:* | draw:* | inspect:* | check:* | hint:* | practise:* | mark:*) compopt -o default 2> /dev/null ;;
  esac
}
complete -F _ohmfold ohmfold
