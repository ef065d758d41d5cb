@echo off
rem Starts Bayproof from this folder; builds it first where that has not been done or the sources are newer.
rem Exit status 3: it could not be built or started.
setlocal EnableExtensions DisableDelayedExpansion

set "root=%~dp0"
if "%root:~-1%"=="\" set "root=%root:~0,-1%"
set "target=%root%\engine\target"
set "jar=%target%\bayproof.jar"
set "archive=%target%\bayproof.jsa"
set "built=%root%\target\built"
set "log=%root%\target\build.log"

rem which Java

set "java="
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if not defined java for %%I in (java.exe) do set "java=%%~$PATH:I"
if not defined java (
    echo bayproof: Java 17 or later is needed and none is on the PATH.>&2
    exit /b 3
)
set "home="
for %%I in ("%java%\..\..") do set "home=%%~fI"
set "version="
if exist "%home%\release" for /f "usebackq tokens=2 delims==" %%V in (`findstr /b "JAVA_VERSION=" "%home%\release"`) do set "version=%%~V"
set "major="
if defined version for /f "delims=.-+" %%M in ("%version%") do set "major=%%M"
if defined major if %major% LSS 17 (
    echo bayproof: Java 17 or later is needed; "%java%" is %version%.>&2
    exit /b 3
)

rem build

set "maven="
for %%I in (mvn.cmd) do set "maven=%%~$PATH:I"
if not exist "%jar%" goto missing
if not exist "%root%\engine\src\main" goto start
call :newer
if not "%errorlevel%"=="10" goto start
if defined maven goto build
echo bayproof: the sources are newer than the build and Maven is not on the PATH: the build is used as it is>&2
goto start

:missing
if defined maven goto build
echo bayproof: it has to be built first, and Maven is not on the PATH.>&2
exit /b 3

:build
if not exist "%root%\target" mkdir "%root%\target"
echo bayproof: building, which takes a minute the first time (log: "%log%")>&2
rem The time of a build is that of its beginning: what is saved meanwhile is newer.
type nul >"%built%.new"
pushd "%root%"
call "%maven%" -q -B -ntp -Dmaven.test.skip=true package >"%log%" 2>&1 <nul
set "failed=%errorlevel%"
popd
if not "%failed%"=="0" (
    echo bayproof: the build failed; the log is "%log%">&2
    exit /b 3
)
move /y "%built%.new" "%built%" >nul
if exist "%archive%" del /q "%archive%" 2>nul

rem start; messages of the Java runtime about its archive are nobody's business

:start
if not exist "%archive%" call :rehearse
rem An archive of jobs is worth the better compiler, one job is not.
set "compiler=-XX:TieredStopAtLevel=1"
if "%~2"=="--jobs" set "compiler=-XX:+TieredCompilation"
"%java%" -XX:+IgnoreUnrecognizedVMOptions -Xshare:auto "-XX:SharedArchiveFile=%archive%" -Xlog:disable %compiler% -XX:+UseSerialGC -Xmx512m -XX:-UsePerfData -jar "%jar%" %*
exit /b %errorlevel%

rem Errorlevel 10 where a source is newer than the build. Files are passed by the environment: no character of a path is read as code.
:newer
powershell -NoProfile -NonInteractive -Command "$since = (Get-Item -LiteralPath $env:jar).LastWriteTimeUtc; if (Test-Path -LiteralPath $env:built) { $b = (Get-Item -LiteralPath $env:built).LastWriteTimeUtc; if ($b -gt $since) { $since = $b } }; $paths = 'pom.xml', 'shared', 'rules', 'engine\pom.xml', 'engine\src\main', 'cases', 'seeds' | ForEach-Object { Join-Path $env:root $_ }; $newer = Get-ChildItem -LiteralPath $paths -Recurse -File -ErrorAction SilentlyContinue | Where-Object { $_.LastWriteTimeUtc -gt $since -and $_.FullName -notmatch '\\target\\' } | Select-Object -First 1; if ($newer) { exit 10 } else { exit 0 }" <nul
exit /b %errorlevel%

:rehearse
"%java%" -XX:+IgnoreUnrecognizedVMOptions -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xlog:disable "-XX:ArchiveClassesAtExit=%archive%.new" -cp "%jar%" bayproof.command.Rehearsal "%root%\cases\street-show\plan.yaml" "%archive%.for" >nul 2>&1 <nul
if exist "%archive%.new" move /y "%archive%.new" "%archive%" >nul 2>&1
exit /b 0
