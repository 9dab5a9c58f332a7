"""Writes every scenario and every refused journal, with what is expected."""

import long_scenarios
import refused_journals
import scenarios_fixer
import scenarios_standing
import scenarios_verdict
import scenarios_work
from scenario_kit import clear

if __name__ == "__main__":
    clear("scenarios")
    clear("refused")
    for module in (scenarios_work, scenarios_standing, scenarios_fixer,
                   scenarios_verdict, long_scenarios, refused_journals):
        module.make()
