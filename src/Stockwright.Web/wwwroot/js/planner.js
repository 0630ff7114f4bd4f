// Sends the planner's form as it changes. Without this module the button "Work it out" does the same.
