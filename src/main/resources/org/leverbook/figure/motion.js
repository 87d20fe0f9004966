(function () {
  "use strict";
  var all = JSON.parse(document.getElementById("all").textContent);
  var count = all.place.length;
  var slider = document.getElementById("slider");
  var button = document.getElementById("play");
  var now = document.getElementById("now");
  var own = document.getElementById("own");
  var plot = document.getElementById("plot");
  var rows = document.querySelectorAll("#values tbody tr");
  var cells = document.querySelectorAll("#numbers tbody tr");
  var upright = document.getElementById("upright");
  var dots = document.querySelectorAll("#marker circle");
  var calm = window.matchMedia ? window.matchMedia("(prefers-reduced-motion: reduce)") : null;
  var shown = all.poster;
  var step = 1;
  var playing = false;
  var timer = null;

  function show(wanted) {
    var frame = Math.max(0, Math.min(count - 1, wanted));
    document.getElementById("frame-" + shown).setAttribute("display", "none");
    document.getElementById("frame-" + frame).removeAttribute("display");
    rows[shown].removeAttribute("aria-current");
    rows[frame].setAttribute("aria-current", "true");
    shown = frame;
    slider.value = String(frame);
    slider.setAttribute("aria-valuetext", all.place[frame]);
    now.textContent = all.place[frame] + ": " + all.told[frame];
    own.textContent = all.own[frame];
    document.getElementById("label").textContent = all.place[frame];
    document.getElementById("stage-told").textContent = "At " + all.place[frame] + ": " + all.told[frame];
    mark(frame);
    numbers(frame);
  }

  function mark(frame) {
    upright.setAttribute("x1", all.x[frame]);
    upright.setAttribute("x2", all.x[frame]);
    for (var j = 0; j < dots.length; j++) {
      var y = all.y[frame][j];
      if (y === null) {
        dots[j].setAttribute("display", "none");
      } else {
        dots[j].removeAttribute("display");
        dots[j].setAttribute("cx", all.x[frame]);
        dots[j].setAttribute("cy", y);
      }
    }
  }

  function numbers(frame) {
    var told = rows[frame].querySelectorAll("td");
    for (var j = 0; j < cells.length; j++) {
      var own = cells[j].querySelectorAll("td");
      own[0].textContent = told[j].textContent;
      own[1].textContent = told[cells.length + j].textContent;
    }
  }

  function pause() {
    playing = false;
    window.clearTimeout(timer);
    button.textContent = "Play";
    now.setAttribute("aria-live", "polite");
  }

  // Who asked the device for less motion gets a few still pictures instead of a film.
  function calmly() {
    return calm !== null && calm.matches;
  }

  function wait() {
    return calmly() ? 1500 : all.wait[shown];
  }

  function next() {
    if (!playing) {
      return;
    }
    if (shown === count - 1) {
      step = all.back ? -1 : 1;
    } else if (shown === 0) {
      step = 1;
    }
    var far = calmly() ? Math.max(1, Math.ceil(count / 8)) : 1;
    var again = shown === count - 1 && !all.back;
    show(again ? 0 : shown + step * far);
    timer = window.setTimeout(next, wait());
  }

  function play() {
    playing = true;
    button.textContent = "Pause";
    // A voice that reads every frame would never end.
    now.setAttribute("aria-live", "off");
    timer = window.setTimeout(next, shown === count - 1 ? 0 : wait());
  }

  function toggle() {
    if (playing) {
      pause();
    } else {
      play();
    }
  }

  function go(frame) {
    pause();
    show(frame);
  }

  function onKey(event) {
    if (event.altKey || event.ctrlKey || event.metaKey) {
      return;
    }
    var key = event.key;
    var at = event.target;
    if (at === button && (key === " " || key === "Enter")) {
      return;
    }
    if (at.closest && at.closest(".scroll")) {
      return;
    }
    if (key === " " || key === "Spacebar") {
      toggle();
    } else if (key === "ArrowRight" || (at === slider && key === "ArrowUp")) {
      go(shown + 1);
    } else if (key === "ArrowLeft" || (at === slider && key === "ArrowDown")) {
      go(shown - 1);
    } else if (key === "PageUp" && at === slider) {
      go(shown + Math.max(1, Math.round(count / 10)));
    } else if (key === "PageDown" && at === slider) {
      go(shown - Math.max(1, Math.round(count / 10)));
    } else if (key === "Home") {
      go(0);
    } else if (key === "End") {
      go(count - 1);
    } else {
      return;
    }
    event.preventDefault();
  }

  function onPlot(event) {
    if (event.type === "pointermove" && event.buttons === 0) {
      return;
    }
    var box = plot.getBoundingClientRect();
    var view = plot.getAttribute("viewBox").split(" ").map(Number);
    var x = view[0] + (event.clientX - box.left) / box.width * view[2];
    var best = 0;
    for (var i = 1; i < count; i++) {
      if (Math.abs(all.x[i] - x) < Math.abs(all.x[best] - x)) {
        best = i;
      }
    }
    go(best);
  }

  button.addEventListener("click", toggle);
  slider.addEventListener("input", function () { go(Number(slider.value)); });
  slider.addEventListener("change", function () {
    if (Number(slider.value) !== shown) {
      go(Number(slider.value));
    }
  });
  document.addEventListener("keydown", onKey);
  plot.addEventListener("pointerdown", onPlot);
  plot.addEventListener("pointermove", onPlot);
  show(shown);
})();
