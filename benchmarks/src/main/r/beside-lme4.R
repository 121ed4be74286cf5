# The random-effects logistic models of the benchmark, fitted by lme4. Usage:
#   Rscript beside-lme4.R GAMES.csv OUT_DIRECTORY
# GAMES.csv has the columns a, b (numbers of the players from 0) and won (1 where a won, else 0).
# Two settings of lme4: as it comes, and with tolerances at which it reaches the Laplace optimum.
suppressPackageStartupMessages(library(lme4))

arguments <- commandArgs(trailingOnly = TRUE)
games <- read.csv(arguments[1])
out <- arguments[2]
players <- max(games$a, games$b) + 1

tight <- glmerControl(optimizer = "bobyqa", tolPwrss = 1e-12,
                      optCtrl = list(rhoend = 1e-10, maxfun = 1e5))
plain <- glmerControl()

seconds <- function(work) unname(system.time(work)["elapsed"])

# Bradley-Terry: each row has +1 for one player and -1 for the other, which no formula of lme4
# says. The frame is made for one player a row; then its transposed Z is replaced.
bradleyTerry <- function(control) {
  frame <- data.frame(won = games$won, player = factor(games$a, levels = seq_len(players) - 1))
  parsed <- suppressWarnings(glFormula(won ~ 0 + (1 | player), data = frame, family = binomial,
                                       control = glmerControl(check.nobs.vs.nlev = "ignore",
                                                              check.nlev.gtr.1 = "ignore")))
  rows <- nrow(games)
  parsed$reTrms$Zt <- sparseMatrix(i = c(games$a, games$b) + 1, j = rep(seq_len(rows), 2),
                                   x = rep(c(1, -1), each = rows), dims = c(players, rows))
  parsed$control <- control
  deviance <- do.call(mkGlmerDevfun, parsed)
  preparing <- environment(deviance)
  found <- optimizeGlmer(deviance, optimizer = "bobyqa", control = control$optCtrl)
  list(deviance = deviance, found = found, pp = preparing$pp)
}

fitted <- function(fit) {
  value <- fit$deviance(fit$found$par)
  sd <- fit$found$par
  # The precision of the spherical effects u at the mode is L L'; effects are sd times u.
  factor <- as(fit$pp$L(), "Matrix")
  list(sd = sd, logLik = -value / 2, mode = sd * fit$pp$delu)
}

games_by_setting <- list()
for (name in c("as it comes", "tight")) {
  control <- if (name == "tight") tight else plain
  times <- numeric(0)
  for (run in 1:3) times <- c(times, seconds(fit <- bradleyTerry(control)))
  answer <- fitted(fit)
  cat(name, times, "evaluations", fit$found$feval, "sd", format(answer$sd, digits = 10),
      "logLik", format(answer$logLik, digits = 12), "\n")
  print(str(fit$found)); print(head(answer$mode))
}
