# Completion of ohmfold for bash. A test compares its options with those of the program.
_ohmfold() {
  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command='' i
  local shared='--figures --as -o --output --width --ascii -h --help'
  COMPREPLY=()
  for ((i = 1; i < COMP_CWORD; i++)); do
    case ${COMP_WORDS[i]} in
      solve | inspect | combine) command=${COMP_WORDS[i]}; break ;;
    esac
  done
  case $before in
    --method) mapfile -t COMPREPLY < <(compgen -W 'series-parallel equal-potentials delta-star node-voltage superposition' -- "$word"); return ;;
    --as) mapfile -t COMPREPLY < <(compgen -W 'text json' -- "$word"); return ;;
    --figures | --width | --case | --across) return ;;
    -o | --output) compopt -o default 2> /dev/null; return ;;
  esac
  case $command:$word in
    :*) mapfile -t COMPREPLY < <(compgen -W 'solve inspect combine -h --help --version' -- "$word") ;;
    solve:-*) mapfile -t COMPREPLY < <(compgen -W "--case --method --pairs $shared" -- "$word") ;;
    inspect:-*) mapfile -t COMPREPLY < <(compgen -W "--case $shared" -- "$word") ;;
    combine:-*) mapfile -t COMPREPLY < <(compgen -W "--across --pairs $shared" -- "$word") ;;
    solve:* | inspect:*) compopt -o default 2> /dev/null ;;
  esac
}
complete -F _ohmfold ohmfold
