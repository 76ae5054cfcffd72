@echo off
setlocal
set "here=%~dp0"
set "app=%here%.build\app\Ramwright.Cli.exe"
dotnet --version >nul 2>nul
if errorlevel 1 (
  echo ramwright: the .NET 10 SDK is missing. Install it from Microsoft's .NET download page and run this again. 1>&2
  exit /b 2
)
if /i "%~1"=="open" goto open
:command
rem Windows has no cheap test for newer sources: the build itself decides, and does nothing when all is current.
dotnet publish "%here%src\Ramwright.Cli" -c Release --use-current-runtime --self-contained false -o "%here%.build\app" --nologo -v quiet -p:PublishReadyToRun=true 1>&2
if errorlevel 1 (
  echo ramwright: the build failed; the lines above say why. 1>&2
  exit /b 2
)
"%app%" %*
exit /b %errorlevel%

:open
rem The bench is a program of its own, so that the other commands start without a web server's weight.
echo(%* | findstr /i /r /c:" --help" /c:" -h" >nul && goto command
dotnet publish "%here%src\Ramwright.Web" -c Release --use-current-runtime --self-contained false -o "%here%.build\web" --nologo -v quiet 1>&2
if errorlevel 1 (
  echo ramwright: the build failed; the lines above say why. 1>&2
  exit /b 2
)
set "words="
:next
shift
if "%~1"=="" goto start
set words=%words% "%~1"
goto next
:start
"%here%.build\web\Ramwright.Web.exe" %words%
exit /b %errorlevel%
