#!/bin/sh
# SPDX-License-Identifier: EPL-2.0
# Opens the workbench with a double click in the macOS file browser.
exec "$(dirname "$0")/punchwright" "$@"
