# Completion of ohmfold for bash. A test compares its options with those of the program.
_ohmfold() {
  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command='' i
  local layout='--width --ascii -h --help'
  local shared="--figures --as -o --output $layout"
  COMPREPLY=()
  for ((i = 1; i < COMP_CWORD; i++)); do
    case ${COMP_WORDS[i]} in
      solve | inspect | combine | check | hint | practise | mark) command=${COMP_WORDS[i]}; break ;;
    esac
  done
  case $before in
    --method) mapfile -t COMPREPLY < <(compgen -W 'series-parallel equal-potentials delta-star node-voltage superposition' -- "$word"); return ;;
    --as) mapfile -t COMPREPLY < <(compgen -W "text json$([[ $command == mark ]] && echo ' csv')" -- "$word"); return ;;
    --level) mapfile -t COMPREPLY < <(compgen -W 'nudge point tell' -- "$word"); return ;;
    --figures | --width | --case | --across) return ;;
    -o | --output | --work) compopt -o default 2> /dev/null; return ;;
  esac
  case $command:$word in
    :*) mapfile -t COMPREPLY < <(compgen -W 'solve inspect combine check hint practise mark -h --help --version' -- "$word") ;;
    solve:-*) mapfile -t COMPREPLY < <(compgen -W "--case --method --pairs $shared" -- "$word") ;;
    inspect:-*) mapfile -t COMPREPLY < <(compgen -W "--case $shared" -- "$word") ;;
    combine:-*) mapfile -t COMPREPLY < <(compgen -W "--across --pairs $shared" -- "$word") ;;
    check:-*) mapfile -t COMPREPLY < <(compgen -W "--strict-rounding --as $layout -o --output" -- "$word") ;;
    hint:-*) mapfile -t COMPREPLY < <(compgen -W "--level $layout -o --output" -- "$word") ;;
    practise:-*) mapfile -t COMPREPLY < <(compgen -W "--work $layout" -- "$word") ;;
    mark:-*) mapfile -t COMPREPLY < <(compgen -W "--strict-rounding --as $layout -o --output" -- "$word") ;;
    solve:* | inspect:* | check:* | hint:* | practise:* | mark:*) compopt -o default 2> /dev/null ;;
  esac
}
complete -F _ohmfold ohmfold
