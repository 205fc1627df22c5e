# Compares `pithward climate` with R's base packages: the correlation of each window of months, as it is and with
# straight lines taken off. Data: R's own `treering` and `sunspot.month` (named by their help pages); whether trees and
# sunspots have to do with each other does not matter here. Needs build/release/bin/pithward, or PITHWARD_BIN.

bin <- Sys.getenv("PITHWARD_BIN", "build/release/bin")
program <- file.path(bin, "pithward")
if (!file.exists(program)) stop("there is no ", program, "; build it first")

years <- 1749:1979 # Both have values.
rings <- data.frame(year = years, T01A = round(as.numeric(window(treering, 1749, 1979)), 3))
months <- matrix(as.numeric(window(sunspot.month, c(1749, 1), c(1979, 12))), ncol = 12, byrow = TRUE)
months[50, 7] <- NA

folder <- tempfile("climate")
dir.create(folder)
series <- file.path(folder, "rings.csv")
climate <- file.path(folder, "climate.csv")
out <- file.path(folder, "out.json")
write.csv(rings, series, row.names = FALSE, quote = FALSE)
write.csv(setNames(data.frame(years, months), c("year", tolower(month.abb))), climate, row.names = FALSE, quote = FALSE, na = "")
# The mean as trend leaves the widths as they are, but for a factor.
status <- system2(program, c("climate", series, "--climate", climate, "--detrend", "mean", "--json", out, "--quiet"))
if (status != 0) stop("pithward climate failed")

# One window a line: what is needed of the JSON, which has one key a line.
text <- readLines(out)
text <- text[seq_len(grep("\"strongest\"", text)[1] - 1)]
values <- function(key) {
  found <- grep(sprintf("^ *\"%s\":", key), text, value = TRUE)
  sub(",$", "", trimws(sub("^[^:]*:", "", found)))
}
ours <- data.frame(first = as.integer(values("first_month")), last = as.integer(values("last_month")),
                   detrended = values("detrended") == "true", years = as.integer(values("years")),
                   r = as.numeric(values("r")))

failures <- 0
for (k in seq_len(nrow(ours))) {
  # Months count from January of the year before the ring's.
  columns <- sapply(ours$first[k]:ours$last[k], function(month) {
    at <- seq_along(years) - 1 + (month - 1) %/% 12
    value <- rep(NA, length(years))
    there <- at >= 1 & at <= length(years)
    value[there] <- months[at[there], (month - 1) %% 12 + 1]
    value
  })
  mean_of_months <- rowMeans(columns)
  both <- !is.na(mean_of_months)
  a <- rings$T01A[both]
  b <- mean_of_months[both]
  t <- years[both]
  r <- if (ours$detrended[k]) cor(residuals(lm(a ~ t)), residuals(lm(b ~ t))) else cor(a, b)
  good <- sum(both) == ours$years[k] && abs(r - ours$r[k]) <= 5.1e-5 # Four digits are written.
  if (!good) {
    cat(sprintf("FAILED months %d to %d, %s: ours %.4f of %d years, R %.6f of %d\n", ours$first[k], ours$last[k],
                if (ours$detrended[k]) "detrended" else "as is", ours$r[k], ours$years[k], r, sum(both)))
    failures <- failures + 1
  }
}
cat(sprintf("climate: %d correlations compared with R's cor and lm, %d differ\n", nrow(ours), failures))
if (failures > 0 || nrow(ours) < 40) quit(status = 1)
