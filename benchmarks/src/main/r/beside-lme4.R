# The random-effects logistic models of the benchmark, fitted by lme4.
#   Rscript beside-lme4.R GAMES.csv OUT RUNS   all models and settings; answers and times to OUT
#   Rscript beside-lme4.R GAMES.csv            one fit of the games as lme4 comes, for its cold time
# GAMES.csv has the columns a, b (numbers of the players from 0) and won (1 where a won, else 0).
suppressPackageStartupMessages(library(lme4))

arguments <- commandArgs(trailingOnly = TRUE)
games <- read.csv(arguments[1])
players <- max(games$a, games$b) + 1

# As lme4 comes it stops a little before the top of the Laplace likelihood; the tight tolerances
# take it there.
plain <- list(tolPwrss = 1e-7, optimizer = list())
tight <- list(tolPwrss = 1e-12, optimizer = list(rhoend = 1e-10, maxfun = 1e5))
settings <- list(plain = plain, tight = tight)

control <- function(setting) {
  glmerControl(optimizer = "bobyqa", tolPwrss = setting$tolPwrss, optCtrl = setting$optimizer,
               check.nobs.vs.nlev = "ignore", check.nlev.gtr.1 = "ignore")
}

# Processor time in seconds, so that other work on the machine does not count.
processor <- function(time) unname(time["user.self"] + time["sys.self"])

# Bradley-Terry: each row has +1 for one player and -1 for the other, which no formula of lme4
# says. The frame is made for one player a row; then its transposed Z is replaced.
bradleyTerry <- function(setting) {
  frame <- data.frame(won = games$won, player = factor(games$a, levels = seq_len(players) - 1))
  parsed <- glFormula(won ~ 0 + (1 | player), data = frame, family = binomial,
                      control = control(setting))
  rows <- nrow(games)
  parsed$reTrms$Zt <- sparseMatrix(i = c(games$a, games$b) + 1, j = rep(seq_len(rows), 2),
                                   x = rep(c(1, -1), each = rows), dims = c(players, rows))
  parsed$control <- control(setting)
  deviance <- do.call(mkGlmerDevfun, parsed)
  # With no fixed effect the first stage of lme4 is the whole fit.
  searching <- system.time(
    found <- optimizeGlmer(deviance, optimizer = "bobyqa", control = setting$optimizer))
  list(deviance = deviance, found = found, searching = processor(searching))
}

answerOfGames <- function(fit) {
  value <- fit$deviance(fit$found$par)
  list(sd = fit$found$par, logLik = -value / 2, fixed = numeric(0),
       mode = environment(fit$deviance)$pp$b(1))
}

if (length(arguments) == 1) {
  answer <- answerOfGames(bradleyTerry(plain))
  cat("lme4 sd", format(answer$sd, digits = 8), "\n")
  quit(status = 0)
}

out <- arguments[2]
runs <- as.integer(arguments[3])
data(cbpp)
herds <- function(setting) {
  glmer(cbind(incidence, size - incidence) ~ period + (1 | herd), data = cbpp, family = binomial,
        control = control(setting))
}

answerOfHerds <- function(fit) {
  list(sd = getME(fit, "theta")[[1]], logLik = as.numeric(logLik(fit)), fixed = fixef(fit),
       mode = ranef(fit)$herd[[1]])
}

lines <- paste("lme4", "version", 0, as.character(packageVersion("lme4")), sep = ",")
note <- function(model, name, values) {
  lines <<- c(lines, paste(model, name, seq_along(values) - 1, format(values, digits = 15,
                                                                     trim = TRUE), sep = ","))
}
record <- function(model, fit, answer) {
  wall <- numeric(0)
  times <- numeric(0)
  searching <- numeric(0)
  for (run in seq_len(runs)) {
    time <- system.time(fitted <- fit())
    wall <- c(wall, unname(time["elapsed"]))
    times <- c(times, processor(time))
    if (!is.null(names(fitted)) && "searching" %in% names(fitted)) {
      searching <- c(searching, fitted$searching)
    }
  }
  found <- answer(fitted)
  for (name in names(found)) if (length(found[[name]]) > 0) note(model, name, found[[name]])
  note(model, "seconds", times)
  note(model, "wall", wall)
  if (length(searching) > 0) note(model, "searching", searching)
}
for (name in names(settings)) {
  record(paste0("games-", name), function() bradleyTerry(settings[[name]]), answerOfGames)
  record(paste0("herds-", name), function() herds(settings[[name]]), answerOfHerds)
}
writeLines(c("model,name,index,value", lines), file.path(out, "lme4.csv"))
write.csv(data.frame(herd = as.integer(cbpp$herd) - 1, period = as.integer(cbpp$period) - 1,
                     incidence = cbpp$incidence, size = cbpp$size),
          file.path(out, "cbpp.csv"), row.names = FALSE, quote = FALSE)
