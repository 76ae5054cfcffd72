@echo off
setlocal
dotnet --version >nul 2>nul
if errorlevel 1 (
  echo test: the .NET 10 SDK is missing. Install it from Microsoft's .NET download page and run this again. 1>&2
  exit /b 2
)
dotnet test "%~dp0Ramwright.slnx" --nologo
exit /b %errorlevel%
