@echo off
rem Runs Outrigger. Builds it first where there is no build yet or a source has changed; then starts it directly.
rem Needs a JDK 17 or later (JAVA_HOME, else java on the PATH); building needs Maven too. The twin of "outrigger".
setlocal EnableExtensions DisableDelayedExpansion

for %%i in ("%~dp0..\..") do set "ROOT=%%~fi"
set "TARGET=%ROOT%\generator\target"
set "JAR=%TARGET%\outrigger-generator.jar"
set "LISTING=%TARGET%\launcher.listing"
set "ARCHIVE=%TARGET%\outrigger.jsa"
set "LOCK=%TARGET%\launcher.lock"

if not defined JAVA_HOME goto java_on_path
set "JAVA=%JAVA_HOME%\bin\java.exe"
if exist "%JAVA%" goto have_java
echo outrigger: JAVA_HOME is %JAVA_HOME%, where there is no bin\java.exe. Set it to a JDK 17 or later, or unset it.>&2
exit /b 1

:java_on_path
set "JAVA=java"
where /q java
if not errorlevel 1 goto have_java
echo outrigger: there is no java. Install a JDK 17 or later, or set JAVA_HOME to one.>&2
exit /b 1

:have_java
if not exist "%TARGET%" mkdir "%TARGET%"
set "NOW=%TARGET%\launcher.now.%RANDOM%%RANDOM%"
call :list "%NOW%"
if not exist "%JAR%" goto build
fc /b "%NOW%" "%LISTING%" >nul 2>&1
if not errorlevel 1 goto run

:build
where /q mvn
if errorlevel 1 (
  del "%NOW%"
  echo outrigger: there is no mvn, which the first run builds the program with. Install Maven.>&2
  exit /b 1
)
set /a WAITED=0
:lock
mkdir "%LOCK%" 2>nul && goto locked
set /a WAITED+=1
if %WAITED% gtr 600 (
  del "%NOW%"
  echo outrigger: another build holds "%LOCK%". Delete that folder if none is running.>&2
  exit /b 1
)
ping -n 2 127.0.0.1 >nul
goto lock

:locked
rem Another run may have built in the meantime.
fc /b "%NOW%" "%LISTING%" >nul 2>&1
if not errorlevel 1 if exist "%JAR%" goto unlock
echo outrigger: building, once after a change of the sources ...>&2
call mvn -q -o -B -f "%ROOT%\pom.xml" -DskipTests package >"%TARGET%\launcher.log" 2>&1 <nul
if not errorlevel 1 goto built
call mvn -q -B -f "%ROOT%\pom.xml" -DskipTests package >"%TARGET%\launcher.log" 2>&1 <nul
if not errorlevel 1 goto built
type "%TARGET%\launcher.log" >&2
echo outrigger: the build failed; see the lines above. It needs a JDK 17 or later, and the network the first time.>&2
rmdir "%LOCK%"
del "%NOW%"
exit /b 1

:built
del "%ARCHIVE%" 2>nul
"%JAVA%" -XX:DumpLoadedClassList="%TARGET%\launcher.classes" -XX:TieredStopAtLevel=1 -XX:C1MaxInlineSize=15 -XX:CICompilerCount=1 -XX:+UseSerialGC -cp "%JAR%" outrigger.generator.cli.WarmUp "%TARGET%\warm-up" >nul 2>&1
if not errorlevel 1 "%JAVA%" -Xshare:dump -XX:SharedClassListFile="%TARGET%\launcher.classes" -XX:SharedArchiveFile="%ARCHIVE%" -cp "%JAR%" >nul 2>&1
if errorlevel 1 del "%ARCHIVE%" 2>nul
copy /y "%NOW%" "%LISTING%" >nul

:unlock
rmdir "%LOCK%"

:run
del "%NOW%" 2>nul
if exist "%ARCHIVE%" goto fast
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:C1MaxInlineSize=15 -XX:CICompilerCount=1 -XX:+UseSerialGC -cp "%JAR%" outrigger.generator.cli.Main %*
exit /b %errorlevel%
:fast
"%JAVA%" -XX:SharedArchiveFile="%ARCHIVE%" -Xshare:auto -Xlog:disable -XX:TieredStopAtLevel=1 -XX:C1MaxInlineSize=15 -XX:CICompilerCount=1 -XX:+UseSerialGC -cp "%JAR%" outrigger.generator.cli.Main %*
exit /b %errorlevel%

rem Writes time, size and name of every source into a file.
:list
(
  for %%f in ("%ROOT%\pom.xml" "%ROOT%\shapes\pom.xml" "%ROOT%\presets\pom.xml" "%ROOT%\generator\pom.xml" "%ROOT%\generator\declare\pom.xml") do @echo %%~tf %%~zf %%f
  for /r "%ROOT%\shapes\src\main" %%f in (*) do @echo %%~tf %%~zf %%f
  for /r "%ROOT%\presets\src\main" %%f in (*) do @echo %%~tf %%~zf %%f
  for /r "%ROOT%\generator\src\main" %%f in (*) do @echo %%~tf %%~zf %%f
  for /r "%ROOT%\generator\declare\src\main" %%f in (*) do @echo %%~tf %%~zf %%f
) >"%~1"
exit /b 0
