# Installs ohmfold to a new prefix and uses what is there as a stranger would. Run by ctest with
# BUILD, SOURCE and WORK (an own folder, emptied first) defined.
file(REMOVE_RECURSE ${WORK})
set(prefix ${WORK}/prefix)

function(run)
  execute_process(COMMAND ${ARGN} RESULT_VARIABLE code OUTPUT_VARIABLE out ERROR_VARIABLE err)
  if(NOT code EQUAL 0)
    message(FATAL_ERROR "${ARGN}\nended with ${code}\n${out}\n${err}")
  endif()
  set(out "${out}" PARENT_SCOPE)
endfunction()

run(${CMAKE_COMMAND} --install ${BUILD} --prefix ${prefix})

# Names that every layout of folders has: libraries may be in lib, lib64 or lib/<machine>.
foreach(pattern bin/ohmfold include/ohmfold/solve.h include/ohmfold/value.h
                lib*/libohmfold.a|lib/*/libohmfold.a share/man/man1/ohmfold.1
                share/bash-completion/completions/ohmfold share/zsh/site-functions/_ohmfold
                share/fish/vendor_completions.d/ohmfold.fish share/doc/ohmfold/LICENSE
                share/ohmfold/problems/*)
  string(REPLACE "|" ";" choices ${pattern})
  list(TRANSFORM choices PREPEND ${prefix}/)
  file(GLOB found ${choices})
  if(NOT found)
    message(FATAL_ERROR "${pattern} has not been installed")
  endif()
endforeach()

run(${prefix}/bin/ohmfold combine "4 + 6 || 3")
run(${prefix}/bin/ohmfold --version)

# The package must hold by itself, wherever the prefix is moved.
file(RENAME ${prefix} ${WORK}/moved)
run(${CMAKE_COMMAND} -S ${SOURCE}/tests/packaging/consumer -B ${WORK}/consumer
    -DCMAKE_PREFIX_PATH=${WORK}/moved "-DCMAKE_CXX_FLAGS=${FLAGS}")
run(${CMAKE_COMMAND} --build ${WORK}/consumer)
run(${WORK}/consumer/consumer)
if(NOT out MATCHES "\"ohmfold-trace\"")
  message(FATAL_ERROR "the consumer wrote:\n${out}")
endif()
