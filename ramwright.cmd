@echo off
setlocal
set "here=%~dp0"
set "app=%here%.build\app\Ramwright.Cli.exe"
dotnet --version >nul 2>nul
if errorlevel 1 (
  echo ramwright: the .NET 10 SDK is missing. Install it from Microsoft's .NET download page and run this again. 1>&2
  exit /b 2
)
rem Windows has no cheap test for newer sources: the build itself decides, and does nothing when all is current.
dotnet publish "%here%src\Ramwright.Cli" -c Release --use-current-runtime --self-contained false -o "%here%.build\app" --nologo -v quiet -p:PublishReadyToRun=true 1>&2
if errorlevel 1 (
  echo ramwright: the build failed; the lines above say why. 1>&2
  exit /b 2
)
"%app%" %*
exit /b %errorlevel%
