#!/usr/bin/env node
console.log("hello", process.argv.slice(2));
