#!/usr/bin/env node
import {command} from './command.js'

await command(process.argv.slice(2))
