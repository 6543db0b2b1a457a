# SPDX-License-Identifier: Apache-2.0
# Drawings by an independent writer, made when the tests are built: Debian's python3-ezdxf with its own python3; another
# python3 on the PATH need not know it. Without it the tests that need them are skipped and say so.
execute_process(COMMAND /usr/bin/python3 -c "import ezdxf" RESULT_VARIABLE without_ezdxf OUTPUT_QUIET ERROR_QUIET)
set(drawings "")
set(real_drawings ${PROJECT_SOURCE_DIR}/../shared/data/dxf)
if(without_ezdxf)
  message(STATUS "python3-ezdxf is not installed: drawings by another writer are not tried.")
else()
  set(drawings ${CMAKE_BINARY_DIR}/drawings)
  add_custom_command(OUTPUT ${drawings}/expected.json
    COMMAND /usr/bin/python3 ${PROJECT_SOURCE_DIR}/tests/data/make_drawings.py ${drawings} ${real_drawings}
    DEPENDS ${PROJECT_SOURCE_DIR}/tests/data/make_drawings.py VERBATIM)
  add_custom_target(made_drawings DEPENDS ${drawings}/expected.json)
  add_dependencies(exchange_tests made_drawings)
endif()
find_package(nlohmann_json REQUIRED)
target_link_libraries(exchange_tests PRIVATE nlohmann_json::nlohmann_json)
target_compile_definitions(exchange_tests PRIVATE BAYWRIGHT_DRAWINGS="${drawings}"
  BAYWRIGHT_REAL_DRAWINGS="${real_drawings}")
target_include_directories(exchange_tests PRIVATE ${CMAKE_CURRENT_SOURCE_DIR})
