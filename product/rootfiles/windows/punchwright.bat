@echo off
rem SPDX-License-Identifier: EPL-2.0
rem Starts Punchwright on Windows.
rem   punchwright [--workspace FOLDER]   opens the workbench
rem   punchwright batch ARGUMENTS...     runs headless; the exit code is the application's own (batch --help explains)
setlocal
set "HERE=%~dp0"
set "JAVA=java"
if exist "%HERE%jre\bin\java.exe" set "JAVA=%HERE%jre\bin\java"
if not "%JAVA_HOME%"=="" if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java"
set "MAJOR="
set "PROBE=%TEMP%\punchwright-java-%RANDOM%.txt"
"%JAVA%" -XshowSettings:properties -version >"%PROBE%" 2>&1
for /f "tokens=3" %%v in ('findstr /c:"java.specification.version" "%PROBE%"') do set "MAJOR=%%v"
del "%PROBE%" >nul 2>&1
if "%MAJOR%"=="" goto nojava
if %MAJOR% LSS 21 goto nojava
set "LAUNCHER="
for %%f in ("%HERE%plugins\org.eclipse.equinox.launcher_*.jar") do set "LAUNCHER=%%f"
if "%LAUNCHER%"=="" goto incomplete
set COMMON=-Djava.awt.headless=true "-Djava.util.logging.config.file=%HERE%logging.properties"
if /i "%~1"=="batch" goto batch
start "" "%JAVA%w" %COMMON% %PUNCHWRIGHT_JAVA_OPTIONS% -jar "%LAUNCHER%" %*
exit /b 0

:batch
rem "shift" does not change %%*, so the words after "batch" are gathered one by one.
set "WORDS="
:next
shift
if "%~1"=="" goto start
set WORDS=%WORDS% "%~1"
goto next
:start
"%JAVA%" %COMMON% %PUNCHWRIGHT_JAVA_OPTIONS% -jar "%LAUNCHER%" -application punchwright.batch.app -nosplash -data @none %WORDS%
exit /b %ERRORLEVEL%

:nojava
echo punchwright: Java 21 or newer is needed and was not found. Install one, or set JAVA_HOME to it. 1>&2
exit /b 1

:incomplete
echo punchwright: the folder %HERE%plugins is not complete. Unpack the archive again. 1>&2
exit /b 1
