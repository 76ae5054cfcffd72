#!/bin/sh
# Takes the pictures in docs/screens anew: the main pages light, dark, on a phone, and one on paper. Wants chromium.
set -eu
cd "$(dirname "$0")/.."
exec dotnet run -c Release --project bench/Ramwright.WebBench -- screens
